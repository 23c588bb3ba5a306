import { one } from '../quantity/unit.ts'
import { checkRatio } from './check-ratio.ts'
import { satisfied } from './judge-blocks.ts'
import type { PlannedCheck } from './plan-types.ts'
import type { PrintContext } from './print-context.ts'
import { printSides, printTruth } from './print-formula.ts'
import type { LineBase } from './printed-line.ts'
import { ratioDigits } from './ratio-digits.ts'
import { settled } from './settled.ts'
import type { CheckLine } from './workings.ts'

/** A check with both sides, printed to as many figures as its verdict needs, and demand over capacity. */
export function printCheck(context: PrintContext, line: PlannedCheck, base: LineBase): CheckLine {
  const { formula, operands, compiled, sides, name, aspect } = line
  const head = { kind: 'check', ...base, name, ...verdictOf(context, line), ...(aspect ? { aspect } : {}) } as const
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

function verdictOf(context: PrintContext, line: PlannedCheck): Pick<CheckLine, 'satisfied' | 'doubts' | 'verdict'> {
  const doubts = context.doubts.get(line) ?? []
  if (satisfied(line, context.results.slots) !== true) return { satisfied: false, doubts, verdict: 'not satisfied' }
  const verdict = doubts.length > 0 ? `satisfied but ${doubts.join(' and ')}` : 'satisfied'
  return { satisfied: true, doubts, verdict }
}

/** The ratio to the digits that agree with the verdict. */
function ratioOf(
  context: PrintContext,
  line: PlannedCheck,
  digits: { demand: string; capacity: string },
): Pick<CheckLine, 'ratio'> {
  const { slots } = context.results
  const value = checkRatio(line, slots)
  if (value === undefined) return {}
  const shown = ratioDigits(value, {
    printed: Number(digits.demand) / Number(digits.capacity),
    satisfied: satisfied(line, slots) === true,
  })
  return { ratio: { value, shown: { digits: shown, unit: one, exact: false } } }
}
