import type { Limit } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'

/** Cover, depth and bars that can be a section at all; `bar` is the name of their diameter. */
export const sectionLimits = (bar: 'bar_size' | 'phi'): readonly Limit[] => [
  limit('d > 0 mm', { says: 'cover and bars leave an effective depth', otherwise: 'refuse', on: 'cover' }),
  limit('d >= 0.5 * thickness', {
    says: 'the effective depth is at least half the thickness',
    otherwise: 'warn',
    on: 'cover',
    source: cite('practice'),
  }),
  limit(`spacing > ${bar}`, { says: 'the bars do not touch', otherwise: 'refuse', on: 'spacing' }),
]
