import type { Input, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, ratio, step } from '../words.ts'
import { pressureUnit } from './ground-units.ts'

/** One factor on the net resistance, for loads that are not factored. */
export const bearingFactor = ratio({
  says: 'required factor on the net resistance',
  symbol: 'F',
  least: '1.5',
  usual: ['2.5', '4'],
  default: '3',
  source: cite('das-foundation', 'usual factor, from memory'),
}) satisfies Input

/** Net pressure against the net resistance over the factor; `applied` is the net pressure, as a formula. */
export const allowable = (applied: string): readonly Step[] => [
  step('q_all', 'q_net / F', {
    says: 'net pressure that is allowed',
    symbol: 'q_a',
    unit: pressureUnit,
    source: cite('das-foundation', 'from memory'),
  }),
  step('p_net', `max(${applied}, 0 kPa)`, {
    says: 'net pressure under the base: more than the ground bore before',
    unit: pressureUnit,
    source: cite('statics'),
  }),
  check('bears', 'p_net <= q_all', { says: 'the ground bears the load with the required factor' }),
]
