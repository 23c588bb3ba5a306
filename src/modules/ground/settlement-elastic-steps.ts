import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { carried, each, step } from '../words.ts'
import { lengthUnit } from './ground-units.ts'
import { netPressure, settlementUnit, settles } from './settlement-inputs.ts'

const steinbrenner = cite('steinbrenner', 'as in Bowles, from memory')
const factor = (name: string, formula: string, more: { says: string; symbol?: string; source?: Citation }): Step =>
  step(name, formula, { source: steinbrenner, ...more })

const rows: readonly Step[] = [
  carried('z_top', { first: '0 m', next: 'z_bottom', says: 'top of the layer, below the base', unit: lengthUnit }),
  carried('I_1_top', { first: '0', next: 'I_1', says: 'first factor at its top', symbol: 'I_1_top' }),
  carried('I_2_top', { first: '0', next: 'I_2', says: 'second factor at its top', symbol: 'I_2_top' }),
  step('z_bottom', 'z_top + thickness', { says: 'its bottom', unit: lengthUnit, source: cite('statics') }),
  factor('N_z', 'z_bottom / B_h', { says: 'its bottom, in half widths', symbol: 'n_z' }),
  factor('r_z', 'sqrt(m_L^2 + N_z^2 + 1)', { says: 'root in both factors' }),
  factor(
    'I_1',
    '(m_L * log((1 + sqrt(m_L^2 + 1)) * sqrt(m_L^2 + N_z^2) / (m_L * (1 + r_z))) + log((m_L + sqrt(m_L^2 + 1)) * sqrt(1 + N_z^2) / (m_L + r_z))) / pi',
    { says: 'first factor at its bottom' },
  ),
  factor('I_2', 'N_z / (2 * pi) * atan(m_L / (N_z * r_z))', { says: 'second factor at its bottom' }),
  factor('I_layer', 'I_1 - I_1_top + (1 - 2 * nu) / (1 - nu) * (I_2 - I_2_top)', {
    says: 'factor of the layer: its bottom less its top',
    symbol: 'I_s',
  }),
  step('s_layer', '4 * p_net * B_h * (1 - nu^2) / E * I_layer', {
    says: 'what the layer shortens under the centre: four corners',
    symbol: 's',
    unit: settlementUnit,
    source: steinbrenner,
  }),
]

/** Immediate settlement of the centre by layers, and of a stiff base. */
export const settlementElasticSteps: readonly Step[] = [
  ...netPressure,
  step('B_h', 'width / 2', { says: 'half width: the centre is four corners', symbol: 'b_h', unit: lengthUnit }),
  factor('m_L', 'length / width', { says: 'length over width' }),
  each('layers', rows),
  step('s_centre', 'sum(layers.s_layer)', {
    says: 'settlement of the centre of a flexible base',
    symbol: 's_ctr',
    unit: settlementUnit,
    source: cite('statics'),
  }),
  step('s_stiff', '0.93 * s_centre', {
    says: 'settlement of a stiff base',
    symbol: 's_stf',
    unit: settlementUnit,
    source: cite('bowles', 'from memory'),
  }),
  settles('s_centre'),
]
