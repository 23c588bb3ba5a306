import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, each, step, take } from '../words.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'

const stress = (name: string, formula: string, more: { says: string; symbol: string; at?: string }): Step => {
  const { at = '', ...rest } = more
  return step(name, formula, { ...rest, unit: pressureUnit, source: cite('statics', at) })
}
const atDepth = (name: string, of: string, more: { says: string; symbol: string }): Step =>
  take(name, { list: 'layers', of, from: 'last', ...more, unit: pressureUnit })

/** Layer by layer, each cut off at the depth asked for; the last one ends there. */
export const soilStressSteps: readonly Step[] = [
  stress('p_free', 'gamma_w * max(-water_depth, 0 m)', {
    says: 'weight of water that stands above the ground',
    symbol: 'p_0',
  }),
  each('layers', [
    carried('z_upper', { first: '0 m', next: 'z_lower', says: 'depth of the top of the layer', unit: lengthUnit }),
    step('z_lower', 'min(z_upper + thickness, depth)', {
      says: 'depth of its base, not below the depth asked for',
      unit: lengthUnit,
      source: cite('statics'),
    }),
    step('h_moist', 'max(min(water_depth, z_lower) - z_upper, 0 m)', {
      says: 'height of it that stands above the water',
      unit: lengthUnit,
      source: cite('statics'),
    }),
    carried('sigma_upper', {
      first: 'surcharge + p_free',
      next: 'sigma_lower',
      says: 'total stress at its top',
      symbol: 'sigma_v_upper',
      unit: pressureUnit,
    }),
    stress('sigma_lower', 'sigma_upper + gamma * h_moist + gamma_sat * (z_lower - z_upper - h_moist)', {
      says: 'total stress at its base',
      symbol: 'sigma_v_lower',
    }),
    stress('u_lower', 'gamma_w * max(z_lower - water_depth, 0 m)', {
      says: 'pore pressure at its base',
      symbol: 'u_lower',
      at: 'hydrostatic',
    }),
    stress('eff_lower', 'sigma_lower - u_lower', {
      says: 'effective stress at its base',
      symbol: "sigma'_v_lower",
      at: 'effective stress, Terzaghi',
    }),
  ]),
  take('z_reached', {
    list: 'layers',
    of: 'z_lower',
    from: 'last',
    says: 'depth to which the layers were followed',
    symbol: 'z_r',
    unit: lengthUnit,
  }),
  atDepth('sigma_v', 'sigma_lower', { says: 'total vertical stress at the depth asked for', symbol: 'sigma_v' }),
  atDepth('u', 'u_lower', { says: 'pore pressure there', symbol: 'u' }),
  atDepth('sigma_eff', 'eff_lower', { says: 'effective vertical stress there', symbol: "sigma'_v" }),
]
