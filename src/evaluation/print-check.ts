import { one } from '../quantity/unit.ts'
import { satisfied } from './judge-blocks.ts'
import type { Base } from './line-base.ts'
import type { PlannedCheck } from './plan-types.ts'
import type { PrintContext } from './print-context.ts'
import { printSides, printTruth } from './print-formula.ts'
import { ratioDigits } from './ratio-digits.ts'
import { settled } from './settled.ts'
import type { CheckLine } from './workings.ts'

/** A check with both sides, printed to as many figures as its verdict needs, and demand over capacity. */
export function printCheck(context: PrintContext, line: PlannedCheck, base: Base): CheckLine {
  const { formula, operands, compiled, sides, name } = line
  const head = { kind: 'check', ...base, name, satisfied: satisfied(line, context.results.slots) === true } as const
  if (!sides || ![sides.demand, sides.capacity].every(side => Number.isFinite(settled(side(context.results.slots)))))
    return { ...head, working: printTruth(context, { formula, operands, compiled }) }
  const { demandLeft, unit } = sides
  const printed = printSides(context, { formula, operands, compiled, unit })
  const [demand, capacity] = demandLeft ? [printed.left, printed.right] : [printed.right, printed.left]
  return {
    ...head,
    working: printed.working,
    demand: { digits: demand, unit, exact: false },
    capacity: { digits: capacity, unit, exact: false },
    ...ratioOf(context, line, { demand, capacity }),
  }
}

/** Demand over capacity, where both are amounts from nought: a ratio of temperatures or of a negative capacity says nothing. */
function ratioOf(
  context: PrintContext,
  line: PlannedCheck,
  digits: { demand: string; capacity: string },
): Pick<CheckLine, 'ratio'> {
  const { sides } = line
  if (!sides || sides.unit.offset !== undefined) return {}
  const demand = sides.demand(context.results.slots)
  const capacity = sides.capacity(context.results.slots)
  if (!(capacity > 0) || demand < 0) return {}
  const shown = ratioDigits(demand / capacity, {
    printed: Number(digits.demand) / Number(digits.capacity),
    satisfied: satisfied(line, context.results.slots) === true,
  })
  return { ratio: { value: demand / capacity, shown: { digits: shown, unit: one, exact: false } } }
}
