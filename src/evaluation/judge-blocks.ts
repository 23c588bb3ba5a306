import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { percentText } from './percent-text.ts'
import type { Judged, PlannedCalc, PlannedCheck, PlannedComparison, PlannedLimit } from './plan-types.ts'

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
  const faults = exceededOf(block.limits, slots).map(planned => ({
    refuses: planned.limit.otherwise === 'refuse',
    fault: faultOf(block, planned),
  }))
  const second = exceededOf(secondLimitsOf(block, slots), slots).map(planned => ofSecond(block, planned))
  const stopped = faults.find(({ refuses }) => refuses)?.fault
  const found = [...faults.map(({ fault }) => fault), ...second, ...disagreements(block, slots)]
  return { found, ...(stopped ? { stopped } : {}) }
}

/** The limits that are not kept. */
export const exceededOf = (limits: readonly PlannedLimit[], slots: Float64Array): readonly PlannedLimit[] =>
  limits.filter(({ judged }) => truth(judged, slots) === false)

/** The limits of a second method, where it applies and the block was not stopped. */
export const secondLimitsOf = ({ second, alive }: PlannedCalc, slots: Float64Array): readonly PlannedLimit[] =>
  second && slots[alive] === 1 && truth(second.applies, slots) === true ? second.limits : []

const outside = ({ limit, row }: PlannedLimit): string =>
  `outside the limit that ${limit.says}${row ? `, in row ${row.index + 1} of \`${row.list}\`` : ''}`

const faultOf = (block: PlannedCalc, planned: PlannedLimit): Diagnostic => ({
  rule: 'limit-exceeded',
  severity: planned.limit.otherwise === 'refuse' ? 'error' : 'warning',
  place: planned.place,
  says: `${block.module.title}: ${outside(planned)}`,
  ...(planned.limit.advice ? { help: planned.limit.advice } : {}),
})

/** The second method stops nothing but itself: what it refuses is a warning. */
const ofSecond = (block: PlannedCalc, planned: PlannedLimit): Diagnostic => ({
  ...faultOf(block, planned),
  severity: 'warning',
  says: `${block.module.title}, second method${planned.limit.otherwise === 'refuse' ? ' left out' : ''}: ${outside(planned)}`,
})

function disagreements(block: PlannedCalc, slots: Float64Array): Diagnostic[] {
  return (block.second?.comparisons ?? []).flatMap(comparison => {
    const { compare, first, second } = comparison
    const difference = differenceOf(comparison, slots)
    if (!(difference > compare.band)) return []
    const says = `\`${first.name}\` and \`${second.name}\` of the second method differ by ${percentText(difference)}; they should agree within ${percentText(compare.band)}`
    return [{ rule: 'methods-disagree', severity: 'warning', place: first.place, says }]
  })
}

/** How far two answers are apart, relative to the first; NaN where they are not compared here. */
const differenceOf = ({ first, second, applies }: PlannedComparison, slots: Float64Array): number =>
  truth(applies, slots) === true
    ? relativeDifference(slots[first.slot] ?? Number.NaN, slots[second.slot] ?? Number.NaN)
    : Number.NaN

/** Whether two answers that are compared lie further apart than their band. */
export const isApart = (comparison: PlannedComparison, slots: Float64Array): boolean =>
  differenceOf(comparison, slots) > comparison.compare.band

/** |second - first| / |first|; 0 where both are 0, 1 where only the first is; NaN where either is not known. */
export function relativeDifference(first: number, second: number): number {
  if (first === second) return 0
  return Math.abs(second - first) / Math.abs(first === 0 ? second : first)
}
