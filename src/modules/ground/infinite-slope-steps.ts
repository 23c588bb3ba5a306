import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step } from '../words.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'

const statics = cite('statics')
const das = cite('das-geotechnical', 'infinite slope, from memory')
const stress = (name: string, formula: string, more: { says: string; symbol: string; source?: typeof das }): Step =>
  step(name, formula, { source: statics, ...more, unit: pressureUnit })

/** Total stress on the plane, the water in it, and what the soil resists. */
export const infiniteSlopeSteps: readonly Step[] = [
  step('h_above', 'plane_depth - water_height', {
    says: 'ground over the plane that stands above the water',
    symbol: 'h_ab',
    unit: lengthUnit,
    source: statics,
  }),
  stress('p_z', 'gamma * h_above + gamma_sat * water_height + surcharge', {
    says: 'weight over the plane, for each level area',
    symbol: 'p_z',
  }),
  stress('sigma_n', 'p_z * cos(slope)^2', { says: 'total stress across the plane', symbol: 'sigma_n' }),
  stress('tau_z', 'p_z * sin(slope) * cos(slope)', { says: 'shear along the plane', symbol: 'tau_z' }),
  stress('u_z', 'gamma_w * water_height * cos(slope)^2', {
    says: 'pore pressure on the plane, water seeping along the slope',
    symbol: 'u_z',
    source: das,
  }),
  stress('tau_f', 'c + (sigma_n - u_z) * tan(phi)', {
    says: 'shear strength on the plane',
    symbol: 'tau_f',
    source: das,
  }),
  step('F_z', 'tau_f / tau_z', { says: 'factor against sliding along the plane', source: das }),
  check('slope_stands', 'F_z >= factor', { says: 'the ground does not slide along the plane', source: das }),
]

/** The same plane by submerged weight and the force of the seepage: no pore pressure. */
export const infiniteSlopeSecond: Second = {
  title: 'Submerged weight and the force of the seepage',
  says: 'The soil skeleton alone: submerged below the water, and dragged down the slope by the water that seeps along it.',
  steps: [
    stress('p_sub', 'gamma * h_above + (gamma_sat - gamma_w) * water_height + surcharge', {
      says: 'weight over the plane, submerged below the water',
      symbol: 'p_sub',
    }),
    stress('j_s', 'gamma_w * sin(slope) * water_height * cos(slope)', {
      says: 'drag of the seepage: gradient by unit weight of water by depth',
      symbol: 'j_s',
    }),
    step('F_j', '(c + p_sub * cos(slope)^2 * tan(phi)) / (p_sub * sin(slope) * cos(slope) + j_s)', {
      says: 'factor against sliding along the plane',
      source: statics,
    }),
  ],
  compare: [{ first: 'F_z', second: 'F_j', band: 1e-6, says: 'one balance, of the whole soil and of its skeleton' }],
}
