import type { Entity, Plan, PlannedCheck } from '../evaluation/plan-types.ts'
import type { Measure } from './measure.ts'
import { varied } from './varied.ts'
import { watchOf } from './watch.ts'

/** The notebook with one assumption at one value. */
export interface SweepRow {
  readonly si: number
  /** True where a method refuses or a formula has no value: nothing else is said then. */
  readonly lost: boolean
  readonly measures: readonly number[]
  /** Checks that are not satisfied, among those that the assumption can move. */
  readonly failing: readonly PlannedCheck[]
}

/** Takes one assumption from `from` to `to` in so many equal steps, both ends among them; all others as written. Refuses (throws) fewer than two places. */
export function sweep(
  plan: Plan,
  entity: Entity,
  about: { readonly from: number; readonly to: number; readonly places: number; readonly measures: readonly Measure[] },
): readonly SweepRow[] {
  const { from, to, places, measures } = about
  if (!(places >= 2)) throw new RangeError(`a sweep has two places or more, not ${places}`)
  const runs = varied(plan, [entity])
  const watch = watchOf(runs)
  return Array.from({ length: places }, (_, index) => {
    const si = index === places - 1 ? to : from + ((to - from) * index) / (places - 1)
    const slots = runs.at([si])
    if (watch.isLost(slots)) return { si, lost: true, measures: measures.map(() => Number.NaN), failing: [] }
    const failing = watch.checks.filter(check => watch.state(check, slots) === 'not satisfied')
    return { si, lost: false, measures: measures.map(({ read }) => read(slots)), failing }
  })
}
