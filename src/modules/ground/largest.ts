import type { DimensionName } from '../dimension-name.ts'
import type { Method } from '../method.ts'

/** The largest value of a list and of one more, all of one dimension. */
export const largest = (dimension: DimensionName): Method => ({
  id: `largest-${dimension.replaceAll('_', '-')}`,
  title: 'The largest of them',
  says: 'The values are compared, and the largest is taken.',
  takes: { values: dimension, other: dimension },
  run: ({ values, other }) => {
    const all = [...(typeof values === 'object' ? values : []), Number(other)]
    return { ok: true, values: { largest: Math.max(...all) }, verified: `${all.length} values were compared` }
  },
})
