import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, look, step, when } from '../words.ts'
import { monoxideLimit, monoxideTime } from './carbon-monoxide-tables.ts'
import { duration, hourlyFlow, minutes } from './living-units.ts'

const balance = cite('mass-balance')
const alarm = cite('en-50291')
const parts = { SI: 'ppm', US: 'ppm' }
const share = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: parts, source: balance })
const reaches = (name: string, level: string, says: string): Step =>
  step(name, `t_x * log((chi_s - outdoor) / (chi_s - ${level}))`, { says, unit: minutes, source: balance })

/** When the alarm sounds at the latest, by the steady levels at which its type is tested. */
const sounding: readonly Step[] = [
  reaches('t_50', '50 ppm', 'time until 50 ppm'),
  reaches('t_100', '100 ppm', 'time until 100 ppm'),
  step('t_al', 'min(t_50 + 90 min, t_100 + 40 min)', {
    says: 'the alarm sounds then at the latest, by what 50 and 100 ppm ask of it',
    unit: minutes,
    source: alarm,
  }),
  when(
    { formula: 'chi_s > 300 ppm' },
    {
      says: 'the room would settle above 300 ppm',
      yes: [
        reaches('t_300', '300 ppm', 'time until 300 ppm'),
        step('t_a', 'min(t_al, t_300 + 3 min)', {
          says: 'the alarm sounds then at the latest',
          symbol: 't_sound',
          unit: minutes,
          source: alarm,
        }),
      ],
      no: [step('t_a', 't_al', { says: 'the alarm sounds then at the latest', symbol: 't_sound', unit: minutes })],
    },
  ),
]

/** What comes in, where the room goes, and whether people are out before it is dangerous. */
export const carbonMonoxideSteps: readonly Step[] = [
  each('sources', [
    step('G_k', 'gas * monoxide', { says: 'carbon monoxide of it', unit: hourlyFlow, source: balance }),
  ]),
  step('G_co', 'sum(sources.G_k)', { says: 'carbon monoxide in all', unit: hourlyFlow, source: balance }),
  share('chi_s', 'outdoor + G_co / supply', 'carbon monoxide at which the room would settle'),
  step('t_x', 'volume / supply', {
    says: 'time in which the air is changed once',
    unit: duration,
    source: balance,
  }),
  share('chi_t', 'chi_s + (outdoor - chi_s) * exp(-burning / t_x)', 'carbon monoxide when it ends'),
  look('chi_lim', monoxideLimit, { row: 'exposure', says: 'limit for those who breathe it', unit: parts }),
  look('t_lim', monoxideTime, { row: 'exposure', says: 'time that the limit is for', unit: duration }),
  check('breathable', 'chi_t <= chi_lim', { says: 'the carbon monoxide keeps the limit to its end' }),
  when(
    { formula: 'chi_s > leave_level' },
    {
      says: 'the room would settle above the level at which all must be out',
      yes: [
        reaches('t_danger', 'leave_level', 'time until the level at which all must be out'),
        ...sounding,
        check('out_in_time', 't_a + leaving <= t_danger', { says: 'all are out before that level' }),
      ],
      no: [
        step('t_danger', 'burning', {
          says: 'the level is never reached: the whole time of burning stands for it',
          unit: minutes,
        }),
      ],
    },
  ),
]
