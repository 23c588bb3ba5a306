import type { Limit } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'

/** No ground is lighter saturated than moist: in the block, where a choice asks for both, or in each row of a list. */
export const saturatedNoLighter = (more: Pick<Limit, 'when' | 'each'> = {}): Limit =>
  limit('gamma_sat >= gamma', {
    ...more,
    says: 'saturated ground weighs no less than the same ground moist',
    advice: 'Water that fills its pores only adds weight: one of the two is mistyped, or stands for another ground',
    otherwise: 'refuse',
    on: 'gamma_sat',
    source: cite('statics'),
  })
