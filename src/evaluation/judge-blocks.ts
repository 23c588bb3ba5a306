import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { percentText } from './percent-text.ts'
import type { Judged, PlannedCalc, PlannedCheck, PlannedLimit } from './plan-types.ts'

/** True or false where a condition was judged; nothing where its numbers are not known. */
export function truth(judged: Judged, slots: Float64Array): boolean | undefined {
  return 'known' in judged ? judged.known : truthAt(judged.slot, slots)
}

const truthAt = (slot: number, slots: Float64Array): boolean | undefined =>
  slots[slot] === 1 ? true : slots[slot] === 0 ? false : undefined

/** Whether a check was reached and what it came to: true is satisfied. */
export function satisfied(check: PlannedCheck, slots: Float64Array): boolean | undefined {
  return check.guards.every(guard => slots[guard] === 1) ? truthAt(check.slot, slots) : undefined
}

/** Limits and second method of one calc block; the refusing limit that stopped it, where one did. */
export function judgeBlocks(
  block: PlannedCalc,
  slots: Float64Array,
): { found: readonly Diagnostic[]; stopped?: Diagnostic } {
  const exceeded = block.limits.filter(({ judged }) => truth(judged, slots) === false)
  const faults = exceeded.map(planned => ({
    refuses: planned.limit.otherwise === 'refuse',
    fault: faultOf(block, planned),
  }))
  const stopped = faults.find(({ refuses }) => refuses)?.fault
  const found = [...faults.map(({ fault }) => fault), ...disagreements(block, slots)]
  return { found, ...(stopped ? { stopped } : {}) }
}

const faultOf = (block: PlannedCalc, { limit, place }: PlannedLimit): Diagnostic => ({
  rule: 'limit-exceeded',
  severity: limit.otherwise === 'refuse' ? 'error' : 'warning',
  place,
  says: `${block.module.title}: outside the limit that ${limit.says}`,
  ...(limit.advice ? { help: limit.advice } : {}),
})

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

/** |second - first| / |first|; 0 where both are 0, 1 where only the first is; NaN where either is not known. */
export function relativeDifference(first: number, second: number): number {
  if (first === second) return 0
  return Math.abs(second - first) / Math.abs(first === 0 ? second : first)
}
