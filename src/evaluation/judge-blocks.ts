import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { percentText } from './percent-text.ts'
import type { Judged, PlannedCalc, PlannedCheck } from './plan-types.ts'

/** True or false where a condition was judged; nothing where its numbers are not known. */
export function truth(judged: Judged, slots: Float64Array): boolean | undefined {
  if ('known' in judged) return judged.known
  const value = slots[judged.slot]
  return value === 1 ? true : value === 0 ? false : undefined
}

/** Whether a check was reached and what it came to: true is satisfied. */
export function satisfied(check: PlannedCheck, slots: Float64Array): boolean | undefined {
  if (!check.guards.every(guard => slots[guard] === 1)) return undefined
  return truth({ slot: check.slot }, slots)
}

/** Limits and second method of one calc block; the refusing limit that stopped it, where one did. */
export function judgeBlocks(
  block: PlannedCalc,
  slots: Float64Array,
): { found: readonly Diagnostic[]; stopped?: Diagnostic } {
  const found: Diagnostic[] = []
  let stopped: Diagnostic | undefined
  for (const { limit, judged, place } of block.limits) {
    if (truth(judged, slots) !== false) continue
    const refuses = limit.otherwise === 'refuse'
    const fault: Diagnostic = {
      rule: 'limit-exceeded',
      severity: refuses ? 'error' : 'warning',
      place,
      says: `${block.module.title}: outside the limit that ${limit.says}`,
    }
    found.push(fault)
    if (refuses) stopped ??= fault
  }
  return { found: [...found, ...disagreements(block, slots)], ...(stopped ? { stopped } : {}) }
}

function disagreements(block: PlannedCalc, slots: Float64Array): Diagnostic[] {
  return (block.second?.comparisons ?? []).flatMap(({ compare, first, second, applies }) => {
    const a = slots[first.slot] ?? Number.NaN
    const b = slots[second.slot] ?? Number.NaN
    const difference = relativeDifference(a, b)
    if (truth(applies, slots) !== true || !(difference > compare.band)) return []
    const says = `\`${first.name}\` and \`${second.name}\` of the second method differ by ${percentText(difference)}; they should agree within ${percentText(compare.band)}`
    return [{ rule: 'methods-disagree', severity: 'warning', place: first.place, says }]
  })
}

/** |second - first| / |first|; 0 where both are 0; NaN where either is not known. */
export function relativeDifference(first: number, second: number): number {
  if (first === second) return 0
  return Math.abs(second - first) / Math.abs(first)
}
