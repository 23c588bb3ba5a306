import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { aciCrackSpacing } from './crack-spacing-aci-318.ts'

const size = { SI: 'mm', US: 'in' }
const area = { SI: 'mm^2', US: 'in^2' }
const moment = { SI: 'kN*m', US: 'lbf*in' }
const code = (at: string) => cite('aci-318', at)

/** Effective depth, and the most the strip may take while the steel strains well past yield. */
export const aciSectionSteps: readonly Step[] = [
  step('d', 'thickness - cover - outer_bar - bar_size / 2', { says: 'effective depth', unit: size }),
  step('M_u', 'abs(moment) * width', { says: 'factored moment on the strip', unit: moment }),
  step('beta_1', '0.85 - 0.05 * min(max(f_c / (1000 psi) - 4, 0), 4)', {
    says: 'depth of the stress block over that of the neutral axis',
    source: code('Table 22.2.2.4.3'),
  }),
  step('epsilon_y', 'f_y / (29000000 psi)', { says: 'strain at which the steel yields', source: code('20.2.2.2') }),
  step('r_t', '0.003 / (0.006 + epsilon_y)', {
    says: 'neutral axis over depth where the steel is 0.003 past yield',
    source: code('7.3.3.1'),
  }),
  step('a_t', 'beta_1 * r_t * d', { says: 'depth of the stress block there', unit: size }),
  step('M_t', '0.9 * 0.85 * f_c * width * a_t * (d - a_t / 2)', {
    says: 'most that the strip may take without compression steel',
    unit: moment,
    source: code('22.3.1, 21.2.2'),
  }),
]

/** The steel that the moment asks for, and the least steel. */
export const aciRequiredSteps: readonly Step[] = [
  step('k_u', 'M_u / (0.9 * 0.85 * f_c * width * d^2)', { says: 'coefficient of the moment', symbol: 'k_u' }),
  step('A_req', '0.85 * f_c / f_y * width * d * (1 - sqrt(1 - 2 * k_u))', {
    says: 'steel for the moment (the smaller root)',
    symbol: 'A_req',
    unit: area,
    source: code('22.2, 22.3'),
  }),
  step('A_min', '0.0018 * width * thickness', { says: 'least steel', unit: area, source: code('7.6.1.1') }),
  step('A_need', 'max(A_req, A_min)', { says: 'steel needed', unit: area }),
  step('A_b', 'pi / 4 * bar_size^2', { says: 'area of one bar', unit: area }),
  step('s_need', 'A_b * width / A_need', { says: 'spacing at which these bars would just do', unit: size }),
]

/** What the chosen bars give, and the moment they carry. */
export const aciCapacitySteps: readonly Step[] = [
  step('A_s', 'A_b * width / spacing', { says: 'steel provided', unit: area }),
  check('area', 'A_s >= A_need', { says: 'steel provided against steel needed', source: code('7.6.1.1') }),
  step('a', 'A_s * f_y / (0.85 * f_c * width)', {
    says: 'depth of the stress block',
    unit: size,
    source: code('22.2.2.4.1'),
  }),
  step('c', 'a / beta_1', { says: 'depth of the neutral axis', symbol: 'x', unit: size, source: code('22.2.2.4.1') }),
  step('epsilon_t', '0.003 * (d - c) / c', { says: 'strain of the steel', source: code('22.2.1.2') }),
  check('tension_controlled', 'epsilon_t >= epsilon_y + 0.003', {
    says: 'the steel strains at least 0.003 past yield',
    source: code('7.3.3.1'),
  }),
  when(
    { formula: 'epsilon_t >= epsilon_y + 0.003' },
    {
      yes: [
        step('M_n', 'A_s * f_y * (d - a / 2)', {
          says: 'nominal moment of the strip',
          unit: moment,
          source: code('22.3.1'),
        }),
        step('M_d', '0.9 * M_n', { says: 'with the strength reduction factor', unit: moment, source: code('21.2.2') }),
      ],
      no: [step('M_d', 'M_t', { says: 'moment that the strip carries: the most it may take', unit: moment })],
    },
  ),
  step('M_R', 'M_d / width', { says: 'the same, per width', unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' } }),
  check('capacity', 'abs(moment) <= M_R', { says: 'moment against what the bars carry' }),
  step('rho_w', 'A_s / (width * d)', { says: 'steel over the effective section, for shear' }),
]

/** Spacing of the bars. */
export const aciSpacingSteps: readonly Step[] = [
  ...aciCrackSpacing('(cover + outer_bar)'),
  step('s_most', 'min(3 * thickness, 18 in, s_crack)', {
    says: 'largest spacing of bars',
    unit: size,
    source: code('7.7.2.2, 7.7.2.3'),
  }),
  check('spacing_most', 'spacing <= s_most', { says: 'spacing of the bars', source: code('7.7.2.2, 7.7.2.3') }),
  step('s_clear', 'max(1 in, bar_size, 4/3 * aggregate)', {
    says: 'least clear distance between bars',
    unit: size,
    source: code('25.2.1'),
  }),
  check('spacing_clear', 'spacing - bar_size >= s_clear', {
    says: 'clear distance between the bars',
    source: code('25.2.1'),
  }),
]
