import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'

const size = { SI: 'mm', US: 'in' }
const area = { SI: 'mm^2', US: 'in^2' }
const stress = { SI: 'MPa', US: 'psi' }
const moment = { SI: 'kN*m', US: 'lbf*in' }
const code = (at: string) => cite('en-1992-1-1', at)

/** Effective depth, design strengths, and the most a singly reinforced section may take. */
export const enSectionSteps: readonly Step[] = [
  step('d', 'thickness - cover - outer_bar - bar_size / 2', { says: 'effective depth', unit: size }),
  step('f_cd', 'alpha_cc * f_ck / gamma_c', {
    says: 'design strength of the concrete',
    unit: stress,
    source: code('3.15'),
  }),
  step('f_yd', 'f_yk / gamma_s', { says: 'design strength of the steel', unit: stress, source: code('3.2.7(2)') }),
  step('M_Ed', 'abs(moment) * width', { says: 'factored moment on the strip', unit: moment }),
  step('x_max', '0.45 * d', {
    says: 'limiting depth of the neutral axis, moments as analysed',
    unit: size,
    source: code('5.5(4)'),
  }),
  step('M_lim', '0.8 * f_cd * width * x_max * (d - 0.4 * x_max)', {
    says: 'limiting moment without compression steel',
    unit: moment,
    source: code('3.1.7(3)'),
  }),
]

/** The steel that the moment asks for, and the least steel. */
export const enRequiredSteps: readonly Step[] = [
  step('mu', 'M_Ed / (width * d^2 * f_cd)', { says: 'coefficient of the moment' }),
  step('z_c', 'd * (0.5 + sqrt(0.25 - mu / 2))', {
    says: 'lever arm of the stress block',
    symbol: 'z_c',
    unit: size,
    source: code('3.1.7(3)'),
  }),
  step('z', 'min(z_c, 0.95 * d)', {
    says: 'lever arm, by practice not over 0.95 of the depth',
    unit: size,
    source: cite('practice'),
  }),
  step('A_req', 'M_Ed / (f_yd * z)', { says: 'steel for the moment', symbol: 'A_req', unit: area }),
  step('f_ctm', '0.3 * cbrt((f_ck / (1 MPa))^2) * (1 MPa)', {
    says: 'mean tensile strength of the concrete',
    unit: stress,
    source: code('Table 3.1'),
  }),
  step('rho_min', 'max(0.26 * f_ctm / f_yk, 0.0013)', { says: 'least steel, as a ratio', source: code('9.1N') }),
  step('A_min', 'rho_min * width * d', { says: 'least steel', unit: area, source: code('9.3.1.1(1)') }),
  step('A_need', 'max(A_req, A_min)', { says: 'steel needed', unit: area }),
  step('A_phi', 'pi / 4 * bar_size^2', { says: 'area of one bar', symbol: 'A_phi', unit: area }),
  step('s_need', 'A_phi * width / A_need', { says: 'spacing at which these bars would just do', unit: size }),
]

/** What the chosen bars give, and the moment they carry. */
export const enCapacitySteps: readonly Step[] = [
  step('A_s', 'A_phi * width / spacing', { says: 'steel provided', unit: area }),
  check('area', 'A_s >= A_need', { says: 'steel provided against steel needed', source: code('9.3.1.1(1)') }),
  step('x', 'f_yd * A_s / (0.8 * f_cd * width)', {
    says: 'depth of the neutral axis',
    unit: size,
    source: code('3.1.7(3)'),
  }),
  check('under_reinforced', 'x <= x_max', {
    says: 'the neutral axis lies within its limit',
    source: code('5.5(4)'),
  }),
  when(
    { formula: 'x <= x_max' },
    {
      yes: [
        step('M_n', 'f_yd * A_s * (d - 0.4 * x)', {
          says: 'moment that the strip carries',
          unit: moment,
          source: code('3.1.7(3)'),
        }),
      ],
      no: [step('M_n', 'M_lim', { says: 'moment that the strip carries: the limiting one', unit: moment })],
    },
  ),
  step('M_R', 'M_n / width', { says: 'the same, per width', unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' } }),
  check('capacity', 'abs(moment) <= M_R', { says: 'moment against what the bars carry' }),
  step('rho_l', 'A_s / (width * d)', {
    says: 'steel over the effective section, for shear',
    unit: { SI: 'percent', US: 'percent' },
  }),
]

/** Spacing of the bars where the moment is largest. */
export const enSpacingSteps: readonly Step[] = [
  step('s_most', 'min(2 * thickness, 250 mm)', {
    says: 'largest spacing of bars where the moment is largest',
    unit: size,
    source: code('9.3.1.1(3)'),
  }),
  check('spacing_most', 'spacing <= s_most', { says: 'spacing of the bars', source: code('9.3.1.1(3)') }),
  step('s_clear', 'max(bar_size, aggregate + 5 mm, 20 mm)', {
    says: 'least clear distance between bars',
    unit: size,
    source: code('8.2(2)'),
  }),
  check('spacing_clear', 'spacing - bar_size >= s_clear', {
    says: 'clear distance between the bars',
    source: code('8.2(2)'),
  }),
]
