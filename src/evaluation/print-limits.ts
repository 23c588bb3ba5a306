import { secondLimitsOf, truth } from './judge-blocks.ts'
import type { PlannedCalc, PlannedLimit } from './plan-types.ts'
import { referenceOf } from './reference-of.ts'
import type { LimitLine } from './workings.ts'

/** The limits of a calculation that were judged, its second method's behind the others. */
export function printLimits(block: PlannedCalc, slots: Float64Array): LimitLine[] {
  const shown = (planned: readonly PlannedLimit[], method: LimitLine['method']): LimitLine[] =>
    [...new Set(planned.map(({ limit }) => limit))].flatMap(limit => {
      const kept = keptBy(
        planned.filter(each => each.limit === limit),
        slots,
      )
      const refuses = limit.otherwise === 'refuse'
      return kept === undefined ? [] : [{ says: limit.says, kept, refuses, method, ...referenceOf(limit.source) }]
    })
  return [...shown(block.limits, 'first'), ...shown(secondLimitsOf(block, slots), 'second')]
}

/** Whether a limit is kept: in each of its rows, where it is one of rows. Nothing where no row is known to exceed it and one is not known. */
function keptBy(planned: readonly PlannedLimit[], slots: Float64Array): boolean | undefined {
  const truths = planned.map(({ judged }) => truth(judged, slots))
  if (truths.includes(false)) return false
  return truths.includes(undefined) ? undefined : true
}
