import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { byStrength } from './bearing-steps.ts'
import { pressureUnit } from './ground-units.ts'

const annex = cite('en-1997-1', 'Annex D, from memory')
const factor = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, source: annex })
const net = (formula: string): Step =>
  step('q_net_E', formula, {
    says: 'net bearing resistance by Annex D',
    symbol: 'q_nE',
    unit: pressureUnit,
    source: annex,
  })
const stripOr = (strip: readonly Step[], other: readonly Step[]): Step =>
  when({ choice: 'shape', is: ['strip'] }, { yes: strip, no: other })

const drained = (phi: string, c: string): readonly Step[] => [
  factor('N_qE', `exp(pi * tan(${phi})) * tan(45 deg + ${phi} / 2)^2`, {
    says: 'factor of the overburden',
    symbol: 'N_q_E',
  }),
  factor('N_cE', `(N_qE - 1) / tan(${phi})`, { says: 'factor of the cohesion', symbol: 'N_c_E' }),
  factor('N_gE', `2 * (N_qE - 1) * tan(${phi})`, { says: 'factor of the weight', symbol: 'N_gamma_E' }),
  stripOr(
    [net(`${c} * N_cE + q_eff * N_qE + 0.5 * gamma_below * width * N_gE - q_eff`)],
    [
      factor('s_qE', `1 + sin(${phi})`, { says: 'shape, overburden', symbol: 's_q_E' }),
      factor('s_cE', '(s_qE * N_qE - 1) / (N_qE - 1)', { says: 'shape, cohesion', symbol: 's_c_E' }),
      net(`${c} * N_cE * s_cE + q_eff * N_qE * s_qE + 0.5 * gamma_below * width * N_gE * 0.7 - q_eff`),
    ],
  ),
]

const undrained = (c_u: string): readonly Step[] => [
  stripOr([net(`(pi + 2) * ${c_u}`)], [net(`1.2 * (pi + 2) * ${c_u}`)]),
]

const byShear = (local: readonly Step[], general: readonly Step[]): Step =>
  when({ choice: 'shear', is: ['local'] }, { yes: local, no: general })

/** The same base by Annex D of EN 1997-1, without partial factors. */
export const bearingTerzaghiSecond: Second = {
  title: 'EN 1997-1, Annex D, without partial factors',
  says: 'A comparison, no check: the same three terms with the smooth wedge of Prandtl and the factors of Annex D; the water is taken alike.',
  steps: [
    byStrength([byShear(drained('phi_s', 'c_s'), drained('phi', 'c'))], [byShear(undrained('c_us'), undrained('c_u'))]),
  ],
  compare: [
    {
      first: 'q_net',
      second: 'q_net_E',
      band: 0.35,
      says: 'other wedge, other shapes: up to a quarter less for a strip, a third more for a square',
      when: { choice: 'strength', is: ['drained'] },
    },
    {
      first: 'q_net',
      second: 'q_net_E',
      band: 0.18,
      says: 'smooth base against rough: 5.14 and 1.2 against 5.71 and 1.3',
      when: { choice: 'strength', is: ['undrained'] },
    },
  ],
}
