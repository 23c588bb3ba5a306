import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import {
  byStrength,
  effectiveArea,
  loadLessUplift,
  overburden,
  prandtlFactors,
  totalOverburden,
  weightBelow,
} from './bearing-steps.ts'
import { factorOnBearing, factorOnFriction, factorOnUndrained } from './en-1997-factors.ts'
import { angleUnit, forceUnit, pressureUnit } from './ground-units.ts'

const d4 = cite('en-1997-1', 'D.4, from memory')
const d3 = cite('en-1997-1', 'D.3, from memory')
const factor = (name: string, formula: string, more: { says: string; source: Citation; symbol?: string }): Step =>
  step(name, formula, more)
const stress = (name: string, formula: string, more: { says: string; source?: Citation; symbol?: string }): Step =>
  step(name, formula, { ...more, unit: pressureUnit })

const factored: readonly Step[] = [
  look('gamma_phi', factorOnFriction, { row: 'approach', says: 'partial factor on friction and cohesion' }),
  step('phi_d', 'atan(tan(phi) / gamma_phi)', {
    says: 'design angle of friction, effective',
    symbol: "phi'_d",
    unit: angleUnit,
    source: cite('en-1997-1', '2.4.6.2'),
  }),
  stress('c_d', 'c / gamma_phi', {
    says: 'design cohesion, effective',
    symbol: "c'_d",
    source: cite('en-1997-1', '2.4.6.2'),
  }),
]

const inclined: readonly Step[] = [
  factor('t_H', 'H / (V_eff + A_e * c_d / tan(phi_d))', { says: 'share of the horizontal load', source: d4 }),
  factor('m_B', '(2 + B_e / L_e) / (1 + B_e / L_e)', { says: 'exponent, load along the width', source: d4 }),
  factor('i_q', '(1 - t_H)^m_B', { says: 'inclination, overburden', source: d4 }),
  factor('i_gamma', '(1 - t_H)^(m_B + 1)', { says: 'inclination, weight', source: d4 }),
  factor('i_c', 'i_q - (1 - i_q) / (N_c * tan(phi_d))', { says: 'inclination, cohesion', source: d4 }),
]

const resistance = (formula: string): Step =>
  stress('q_R', formula, {
    says: 'effective resistance: cohesion, overburden, weight; no depth factors',
    symbol: "q'_R",
    source: d4,
  })

const drained: readonly Step[] = [
  ...factored,
  loadLessUplift,
  ...effectiveArea('V_eff'),
  weightBelow('width'),
  ...prandtlFactors('phi_d'),
  factor('N_gamma', '2 * (N_q - 1) * tan(phi_d)', { says: 'factor of the weight, rough base', source: d4 }),
  factor('s_q', '1 + B_e / L_e * sin(phi_d)', { says: 'shape, overburden', source: d4 }),
  factor('s_gamma', '1 - 0.3 * B_e / L_e', { says: 'shape, weight', source: d4 }),
  factor('s_c', '(s_q * N_q - 1) / (N_q - 1)', { says: 'shape, cohesion', source: d4 }),
  when(
    { given: 'H' },
    {
      yes: [
        ...inclined,
        resistance(
          'c_d * N_c * s_c * i_c + q_eff * N_q * s_q * i_q + gamma_below * B_e / 2 * N_gamma * s_gamma * i_gamma',
        ),
      ],
      no: [resistance('c_d * N_c * s_c + q_eff * N_q * s_q + gamma_below * B_e / 2 * N_gamma * s_gamma')],
    },
  ),
  stress('q_gross', 'q_R + u', { says: 'gross, in total stress', symbol: 'q_g', source: cite('statics') }),
  stress('q_net', 'q_R - q_eff', { says: 'net of the overburden', symbol: 'q_n', source: cite('statics') }),
]

const undrained: readonly Step[] = [
  look('gamma_cu', factorOnUndrained, { row: 'approach', says: 'partial factor on undrained strength' }),
  stress('c_ud', 'c_u / gamma_cu', { says: 'design undrained strength', source: cite('en-1997-1', '2.4.6.2') }),
  totalOverburden,
  ...effectiveArea('load'),
  factor('s_c', '1 + 0.2 * B_e / L_e', { says: 'shape', source: d3 }),
  when(
    { given: 'H' },
    {
      yes: [
        factor('t_H', 'H / (A_e * c_ud)', { says: 'share of the horizontal load', source: d3 }),
        factor('i_c', '(1 + sqrt(1 - t_H)) / 2', { says: 'inclination', source: d3 }),
        stress('q_net', '(pi + 2) * c_ud * s_c * i_c', { says: 'net of the overburden', symbol: 'q_n', source: d3 }),
      ],
      no: [stress('q_net', '(pi + 2) * c_ud * s_c', { says: 'net of the overburden', symbol: 'q_n', source: d3 })],
    },
  ),
  stress('q_gross', 'q_net + q_tot', { says: 'gross, in total stress', symbol: 'q_g', source: d3 }),
]

const resists = (resisting: string, load: string): readonly Step[] => [
  look('gamma_R', factorOnBearing, { row: 'approach', says: 'partial factor on bearing resistance' }),
  step('R_d', `${resisting} * A_e / gamma_R`, {
    says: 'design bearing resistance',
    unit: forceUnit,
    source: cite('en-1997-1', '6.5.2.1'),
  }),
  check('bears', `${load} <= R_d`, { says: 'the ground bears the load', source: cite('en-1997-1', 'Eq. 6.1') }),
]

/** Annex D: resistance of the ground, gross and net, and its design value against the load. */
export const bearingEn1997Steps: readonly Step[] = [
  ...overburden,
  byStrength([...drained, ...resists('q_R', 'V_eff')], [...undrained, ...resists('q_gross', 'load')]),
]
