import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { heaveFactor } from './base-heave-factor.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'

const terzaghi = cite('terzaghi-1943', 'heave of the bottom of a cut')
const eide = cite('bjerrum-eide')

const strip = (formula: string, says: string): Step =>
  step('B_h', formula, { says, symbol: 'B_h', unit: lengthUnit, source: terzaghi })

/** Terzaghi: a strip of ground beside the pit sinks, held by shear on its outer side, and fails in bearing at formation. */
export const baseHeaveSteps: readonly Step[] = [
  when(
    { given: 'clay_below' },
    {
      yes: [strip('min(0.7 * pit_width, clay_below)', 'width of the strip that sinks, no wider than the clay is deep')],
      no: [strip('0.7 * pit_width', 'width of the strip that sinks beside the pit')],
    },
  ),
  step('p_v', 'gamma * depth + surcharge', {
    says: 'load of the ground beside the pit at formation',
    symbol: 'p_v',
    unit: pressureUnit,
    source: cite('statics'),
  }),
  step('N_b', 'p_v / c_below', { says: 'stability number at formation', source: cite('peck-1969') }),
  step('p_side', 'c_side * depth / B_h', {
    says: 'part of it that hangs on the outer side of the strip',
    symbol: 'p_s',
    unit: pressureUnit,
    source: terzaghi,
  }),
  step('p_net', 'p_v - p_side', {
    says: 'what presses on the clay at formation',
    symbol: 'p_n',
    unit: pressureUnit,
    source: terzaghi,
  }),
  when(
    { formula: 'p_net > 0 kPa' },
    {
      says: 'the ground beside the pit presses on the clay at formation',
      yes: [
        step('F_T', '5.7 * c_below / p_net', { says: 'factor against heave, Terzaghi', source: terzaghi }),
        check('no_heave', 'F_T >= factor', { says: 'the bottom does not heave, Terzaghi', source: terzaghi }),
      ],
    },
  ),
]

/** Bjerrum and Eide: the pit as a footing turned upside down, by the shape of the pit. */
export const baseHeaveSecond: Second = {
  title: 'Bjerrum and Eide',
  says: 'The pit is taken as a footing turned upside down; its factor comes from failures and from the shape of the pit. No shear beside the pit is counted.',
  steps: [
    step('r_d', 'min(depth / pit_width, 4)', {
      says: 'depth over width, no more than the table needs',
      source: eide,
    }),
    look('N_sq', heaveFactor, { row: 'r_d', says: 'factor of a square pit' }),
    step('N_c', 'N_sq * (0.84 + 0.16 * pit_width / pit_length)', {
      says: 'factor of this pit by its shape',
      source: eide,
    }),
    step('F_B', 'c_below * N_c / p_v', { says: 'factor against heave, Bjerrum and Eide', source: eide }),
    check('no_heave_deep', 'F_B >= factor', {
      says: 'the bottom does not heave, Bjerrum and Eide',
      source: eide,
    }),
  ],
  compare: [
    {
      first: 'F_T',
      second: 'F_B',
      band: 0.35,
      says: 'two mechanisms of failure; apart by more, look at which of them fits the pit',
      when: { formula: 'p_net > 0 kPa' },
    },
  ],
}
