import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step } from '../words.ts'
import { das, height, lineForce, lineMoment, stress } from './cantilever-sheeting-words.ts'
import { lengthUnit, weightUnit } from './ground-units.ts'
import { quarticEmbedment } from './quartic-embedment.ts'

const term = (name: string, formula: string, unit: { SI: string; US: string }): Step =>
  step(name, formula, { says: 'term of the equation of balance', unit, source: das })

/** Active force down to the level where passive resistance has caught up, and its height above that level. */
const active: readonly Step[] = [
  step('n', 'gamma_b * (K_p / passive_factor - K_a)', {
    says: 'growth of net resistance with depth below formation',
    unit: weightUnit,
    source: das,
  }),
  height('L_3', 'sigma_2 / n', 'depth below formation where the net pressure is nil', das),
  lineForce('P', 'P_1 + P_2 + sigma_2 * L_3 / 2', 'active force down to there'),
  lineMoment(
    'M_P',
    'P_1 * (L_2 + L_3) + L_1^2 * (2 * sigma_q + sigma_1) / 6 + P_2 * L_3 + L_2^2 * (2 * sigma_1 + sigma_2) / 6 + sigma_2 * L_3^2 / 3',
    'its moment about there',
  ),
  height('y_P', 'M_P / P', 'its height above there'),
]

/** Depth below that level at which forces and moments balance; the wall turns about a point near its toe. */
const balance: readonly Step[] = [
  stress(
    'sigma_5',
    'K_p / passive_factor * (gamma * L_1 + gamma_b * L_2) + n * L_3',
    'net resistance behind the wall there, without the load on the ground',
    das,
  ),
  term('A_1', 'sigma_5 / n', lengthUnit),
  term('A_2', '8 * P / n', { SI: 'm^2', US: 'ft^2' }),
  term('A_3', '6 * P * (2 * y_P * n + sigma_5) / n^2', { SI: 'm^3', US: 'ft^3' }),
  term('A_4', 'P * (6 * y_P * sigma_5 + 4 * P) / n^2', { SI: 'm^4', US: 'ft^4' }),
  solve(quarticEmbedment, {
    takes: { A_1: 'A_1', A_2: 'A_2', A_3: 'A_3', A_4: 'A_4' },
    gives: { depth: { dimension: 'length', name: 'L_4', says: 'depth of the toe below there', unit: lengthUnit } },
    says: 'the depth at which forces and moments balance',
    source: das,
  }),
  height('D_0', 'L_3 + L_4', 'embedment in balance', das),
  stress('sigma_3', 'n * L_4', 'net resistance before the wall at its toe, not turned yet', das),
  stress('sigma_4', 'sigma_5 + n * L_4', 'net resistance behind the wall at its toe', das),
  height(
    'L_5',
    '(sigma_3 * L_4 - 2 * P) / (sigma_3 + sigma_4)',
    'height of the toe that is turned: forces balance',
    das,
  ),
]

const largestMoment: readonly Step[] = [
  height('z_0', 'sqrt(2 * P / n)', 'depth of no shear, below the level of no pressure', das),
  lineMoment('M_max', 'P * (y_P + z_0) - n * z_0^3 / 6', 'largest moment in the wall', das),
]

/** The wall in sand, from net pressure to embedment and largest moment. */
export const inSand: readonly Step[] = [
  step('K_p', 'tan(45 deg + phi / 2)^2', { says: 'passive coefficient', source: cite('rankine') }),
  ...active,
  ...balance,
  ...largestMoment,
]
