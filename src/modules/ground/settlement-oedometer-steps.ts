import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { carried, each, step } from '../words.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'
import { netPressure, settlementUnit, settles } from './settlement-inputs.ts'

const statics = cite('statics')
const das = cite('das-geotechnical', 'from memory')
const stress = (name: string, formula: string, more: { says: string; symbol: string; source?: Citation }): Step =>
  step(name, formula, { source: statics, ...more, unit: pressureUnit })

const rows: readonly Step[] = [
  carried('z_top', { first: '0 m', next: 'z_bottom', says: 'top of the layer, below the base', unit: lengthUnit }),
  carried('sv_top', {
    first: 'q_tot',
    next: 'sv_bottom',
    says: 'total stress there',
    symbol: 'sigma_v_top',
    unit: pressureUnit,
  }),
  step('z_bottom', 'z_top + thickness', { says: 'its bottom', unit: lengthUnit, source: statics }),
  stress('sv_bottom', 'sv_top + gamma_layer * thickness', { says: 'total stress there', symbol: 'sigma_v_bottom' }),
  step('z_mid', '(z_top + z_bottom) / 2', { says: 'its middle', unit: lengthUnit, source: statics }),
  stress('s_0', '(sv_top + sv_bottom) / 2 - gamma_w * max(depth + z_mid - water_depth, 0 m)', {
    says: 'effective stress there, before',
    symbol: "sigma'_0",
  }),
  stress('s_add', 'p_net * width * length / ((width + z_mid) * (length + z_mid))', {
    says: 'what the base adds there, spread two to one',
    symbol: 'Delta_sigma',
    source: das,
  }),
  stress('s_1', 's_0 + s_add', { says: 'effective stress there, after', symbol: "sigma'_1" }),
  stress('s_y', 'max(sigma_p, s_0)', {
    says: 'stress at which the clay begins to yield',
    symbol: "sigma'_y",
    source: das,
  }),
  step('s_layer', 'thickness / (1 + e_0) * (C_r * log10(min(s_1, s_y) / s_0) + C_c * log10(max(s_1 / s_y, 1)))', {
    says: 'what the layer shortens',
    symbol: 's',
    unit: settlementUnit,
    source: das,
  }),
]

/** Consolidation of clay layers, each by its middle. */
export const settlementOedometerSteps: readonly Step[] = [
  ...netPressure,
  each('layers', rows),
  step('s_all', 'sum(layers.s_layer)', {
    says: 'settlement by consolidation',
    symbol: 's_con',
    unit: settlementUnit,
    source: statics,
  }),
  settles('s_all'),
]
