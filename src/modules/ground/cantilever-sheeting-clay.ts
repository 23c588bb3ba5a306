import type { Step } from '../module.ts'
import { step } from '../words.ts'
import { das, height, lineForce, lineMoment, stress } from './cantilever-sheeting-words.ts'
import { pressureUnit } from './ground-units.ts'

/** Active force of the sand above formation, and its height above it. */
const active: readonly Step[] = [
  lineForce('P', 'P_1 + P_2', 'active force above formation'),
  lineMoment(
    'M_P',
    'P_1 * L_2 + L_1^2 * (2 * sigma_q + sigma_1) / 6 + L_2^2 * (2 * sigma_1 + sigma_2) / 6',
    'its moment about formation',
  ),
  height('y_P', 'M_P / P', 'its height above formation'),
]

const balance: readonly Step[] = [
  stress('Q_o', 'surcharge + gamma * L_1 + gamma_b * L_2', 'load of the ground behind the wall at formation', das),
  stress('sigma_6', '4 * c_below / passive_factor - Q_o', 'net resistance of the clay before the wall', das),
  stress(
    'sigma_7',
    '4 * c_below / passive_factor + Q_o - surcharge',
    'and behind it at the toe, without the load',
    das,
  ),
  step('r_6', 'sigma_6 / (sigma_6 + sigma_7)', { says: 'share of the first in both', source: das }),
  step('a_D', 'sigma_6 * (1 / 2 - 2 * r_6 / 3)', {
    says: 'term of the equation of balance',
    unit: pressureUnit,
    source: das,
  }),
  lineForce('b_D', 'P * (1 - 4 * r_6 / 3)', 'term of the equation of balance', das),
  lineMoment('e_D', 'M_P + 2 * P^2 / (3 * (sigma_6 + sigma_7))', 'term of the equation of balance', das),
  height(
    'D_0',
    '(b_D + sqrt(b_D^2 + 4 * a_D * e_D)) / (2 * a_D)',
    'embedment in balance: forces and moments about the toe',
    das,
  ),
  height(
    'L_5',
    '2 * (sigma_6 * D_0 - P) / (sigma_6 + sigma_7)',
    'height of the toe that is turned: forces balance',
    das,
  ),
]

const largestMoment: readonly Step[] = [
  height('z_0', 'P / sigma_6', 'depth of no shear below formation', das),
  lineMoment('M_max', 'P * (y_P + z_0) - sigma_6 * z_0^2 / 2', 'largest moment in the wall', das),
]

/** The wall in clay below formation, from net pressure to embedment and largest moment. */
export const inClay: readonly Step[] = [...active, ...balance, ...largestMoment]
