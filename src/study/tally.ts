import type { PlannedCheck } from '../evaluation/plan-types.ts'
import type { Measure } from './measure.ts'
import { type Spreaded, spreadOf } from './spread-of.ts'
import type { Watch } from './watch.ts'

/** How often a check was asked, and how often satisfied. */
export interface CheckCount {
  readonly check: PlannedCheck
  readonly asked: number
  readonly satisfied: number
}

/** Counts over samples of which none is lost. */
export interface Tally {
  readonly add: (slots: Float64Array) => void
  readonly read: () => {
    readonly kept: number
    readonly checks: readonly CheckCount[]
    /** Samples in which every check asked was satisfied. */
    readonly allSatisfied: number
    readonly measures: readonly Spreaded[]
  }
}

/** Nothing counted yet, of `most` samples that may come. */
export function tallyOf(
  { checks, state }: Watch,
  { measures, most }: { readonly measures: readonly Measure[]; readonly most: number },
): Tally {
  const [asked, satisfied] = [new Float64Array(checks.length), new Float64Array(checks.length)]
  const kinds = measures.map(measure => ({ measure, values: new Float64Array(most) }))
  let [kept, allSatisfied] = [0, 0]
  /** True where every check asked is satisfied. */
  const judge = (slots: Float64Array): boolean => {
    let all = true
    for (let at = 0; at < checks.length; at += 1) {
      const is = state(checks[at] as PlannedCheck, slots)
      if (is === 'not asked') continue
      asked[at] = (asked[at] as number) + 1
      if (is === 'satisfied') satisfied[at] = (satisfied[at] as number) + 1
      else all = false
    }
    return all
  }
  return {
    add: slots => {
      if (judge(slots)) allSatisfied += 1
      for (const { measure, values } of kinds) values[kept] = measure.read(slots)
      kept += 1
    },
    read: () => ({
      kept,
      allSatisfied,
      checks: checks.map((check, at) => ({ check, asked: asked[at] as number, satisfied: satisfied[at] as number })),
      measures: kinds.map(({ measure, values }) => spreadOf(measure, values.subarray(0, kept))),
    }),
  }
}
