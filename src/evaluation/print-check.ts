import type { Shown } from '../quantity/types.ts'
import { satisfied } from './judge-blocks.ts'
import type { PlannedCheck } from './plan-types.ts'
import type { PrintContext } from './print-context.ts'
import { printSides, printTruth } from './print-formula.ts'
import type { Base } from './print-lines.ts'
import type { CheckLine } from './workings.ts'

/** A check with both sides, printed to as many figures as its verdict needs, and demand over capacity. */
export function printCheck(context: PrintContext, line: PlannedCheck, base: Base): CheckLine {
  const { formula, operands, compiled, sides, name } = line
  const verdict = satisfied(line, context.results.slots) === true
  const working = printTruth(context, { formula, operands, compiled })
  const head = { kind: 'check', ...base, name, working, satisfied: verdict } as const
  if (!sides) return head
  const { slots } = context.results
  const demand = sides.demand(slots)
  const capacity = sides.capacity(slots)
  const printed = printSides(context, { demand, capacity, unit: sides.unit, satisfied: verdict, operands })
  return { ...head, demand: printed.demand, capacity: printed.capacity, ...ratioOf(demand, capacity, printed.ratio) }
}

function ratioOf(demand: number, capacity: number, shown: Shown | undefined): Pick<CheckLine, 'ratio'> {
  return shown && capacity > 0 ? { ratio: { value: demand / capacity, shown } } : {}
}
