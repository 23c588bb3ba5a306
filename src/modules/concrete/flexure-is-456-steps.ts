import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { leastSlabSteel, limitingAxis, yieldStrength } from './is456-steel.ts'

const size = { SI: 'mm', US: 'in' }
const area = { SI: 'mm^2', US: 'in^2' }
const moment = { SI: 'kN*m', US: 'lbf*in' }
const perWidth = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const g1 = (part: string) => cite('is-456', `Annex G, G-1.1(${part})`)

/** Effective depth, strengths, and the moment on the strip against the most a singly reinforced section may take. */
export const sectionSteps: readonly Step[] = [
  step('d', 'thickness - cover - outer_bar - bar_size / 2', { says: 'effective depth', unit: size }),
  look('f_y', yieldStrength, {
    row: 'steel',
    says: 'characteristic strength of the steel',
    unit: { SI: 'MPa', US: 'psi' },
  }),
  look('k_x', limitingAxis, {
    row: 'steel',
    says: 'limiting neutral axis, as a part of the effective depth',
    symbol: 'k_x',
  }),
  step('M_u', 'abs(moment) * width', { says: 'factored moment on the strip', unit: moment }),
  step('x_max', 'k_x * d', {
    says: 'limiting depth of the neutral axis',
    symbol: 'x_u_max',
    unit: size,
    source: cite('is-456', 'cl. 38.1'),
  }),
  step('K_lim', '0.36 * k_x * (1 - 0.42 * k_x)', {
    says: 'coefficient of the limiting moment',
    symbol: 'K_lim',
    source: g1('c'),
  }),
  step('M_lim', 'K_lim * f_ck * width * d^2', {
    says: 'limiting moment without compression steel',
    symbol: 'M_u_lim',
    unit: moment,
    source: g1('c'),
  }),
]

/** The steel that the moment asks for, and the least steel. */
export const requiredSteps: readonly Step[] = [
  step('K_u', 'M_u / (f_ck * width * d^2)', { says: 'coefficient of the moment', symbol: 'K_u' }),
  step('A_req', 'f_ck / (2 * f_y) * (1 - sqrt(1 - 4 * K_u / 0.87)) * width * d', {
    says: 'steel for the moment (the smaller root)',
    symbol: 'A_req',
    unit: area,
    source: g1('b'),
  }),
  look('rho_min', leastSlabSteel, { row: 'steel', says: 'least steel over the gross section' }),
  step('A_min', 'rho_min * width * thickness', {
    says: 'least steel',
    unit: area,
    source: cite('is-456', 'cl. 26.5.2.1'),
  }),
  step('A_need', 'max(A_req, A_min)', { says: 'steel needed', unit: area }),
  step('A_phi', 'pi / 4 * bar_size^2', { says: 'area of one bar', symbol: 'A_phi', unit: area }),
  step('s_need', 'A_phi * width / A_need', { says: 'spacing at which these bars would just do', unit: size }),
]

/** What the chosen bars give, and the moment they carry. */
export const capacitySteps: readonly Step[] = [
  step('A_st', 'A_phi * width / spacing', { says: 'steel provided', unit: area }),
  check('area', 'A_st >= A_need', {
    says: 'steel provided against steel needed',
    source: cite('is-456', 'cl. 26.5.2.1'),
  }),
  step('x_u', '0.87 * f_y * A_st / (0.36 * f_ck * width)', {
    says: 'depth of the neutral axis',
    unit: size,
    source: g1('a'),
  }),
  check('under_reinforced', 'x_u <= x_max', {
    says: 'the steel yields before the concrete crushes',
    source: cite('is-456', 'cl. 38.1'),
  }),
  when(
    { formula: 'x_u <= x_max' },
    {
      yes: [
        step('M_n', '0.87 * f_y * A_st * d * (1 - A_st * f_y / (width * d * f_ck))', {
          says: 'moment that the strip carries',
          unit: moment,
          source: g1('b'),
        }),
      ],
      no: [
        step('M_n', 'M_lim', {
          says: 'moment that the strip carries: the limiting one',
          unit: moment,
          source: g1('d'),
        }),
      ],
    },
  ),
  step('M_R', 'M_n / width', { says: 'the same, per width', unit: perWidth }),
  check('capacity', 'abs(moment) <= M_R', { says: 'moment against what the bars carry' }),
  step('p_t', 'A_st / (width * d)', {
    says: 'steel over the effective section, for shear',
    unit: { SI: 'percent', US: 'percent' },
  }),
]

/** Spacing and size of the bars. */
export const spacingSteps: readonly Step[] = [
  step('s_most', 'min(3 * d, 300 mm)', {
    says: 'largest spacing of main bars',
    unit: size,
    source: cite('is-456', 'cl. 26.3.3 b) 1)'),
  }),
  check('spacing_most', 'spacing <= s_most', {
    says: 'spacing of the bars',
    source: cite('is-456', 'cl. 26.3.3 b) 1)'),
  }),
  step('s_clear', 'max(bar_size, aggregate + 5 mm)', {
    says: 'least clear distance between bars',
    unit: size,
    source: cite('is-456', 'cl. 26.3.2 a)'),
  }),
  check('spacing_clear', 'spacing - bar_size >= s_clear', {
    says: 'clear distance between the bars',
    source: cite('is-456', 'cl. 26.3.2 a)'),
  }),
  check('bar_largest', 'bar_size <= thickness / 8', {
    says: 'bars of a slab against its thickness',
    source: cite('is-456', 'cl. 26.5.2.2'),
  }),
]
