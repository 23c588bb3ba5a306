import { secondLimitsOf, truth } from './judge-blocks.ts'
import type { PlannedCalc, PlannedLimit } from './plan-types.ts'
import { referenceOf } from './reference-of.ts'
import type { LimitLine } from './workings.ts'

/** The limits of a calculation that were judged, its second method's behind the others. */
export function printLimits(block: PlannedCalc, slots: Float64Array): LimitLine[] {
  const shown = (planned: readonly PlannedLimit[], method: LimitLine['method']): LimitLine[] =>
    planned.flatMap(({ limit, judged }) => {
      const kept = truth(judged, slots)
      const refuses = limit.otherwise === 'refuse'
      return kept === undefined ? [] : [{ says: limit.says, kept, refuses, method, ...referenceOf(limit.source) }]
    })
  return [...shown(block.limits, 'first'), ...shown(secondLimitsOf(block, slots), 'second')]
}
