import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { inClay } from './cantilever-sheeting-clay.ts'
import { inSand } from './cantilever-sheeting-sand.ts'
import { das, height, lineForce, stress } from './cantilever-sheeting-words.ts'
import { weightUnit } from './ground-units.ts'

const weight = (formula: string, says: string): Step =>
  step('gamma_b', formula, { says, unit: weightUnit, source: cite('statics') })

const water: Step = when(
  { choice: 'water', is: ['level on both sides'] },
  {
    yes: [
      height('L_1', 'min(max(water_depth, 0 m), depth)', 'height above the water, no deeper than formation'),
      height('L_2', 'depth - L_1', 'height below the water'),
      weight('gamma_sat - gamma_w', 'unit weight below the water and below formation'),
    ],
    no: [
      height('L_1', 'depth', 'height above the water: all of it'),
      height('L_2', '0 m', 'height below the water'),
      weight('gamma', 'unit weight below formation: no water'),
    ],
  },
)

const behind: readonly Step[] = [
  step('K_a', 'tan(45 deg - phi / 2)^2', { says: 'active coefficient', source: cite('rankine') }),
  stress('sigma_q', 'K_a * surcharge', 'pressure on the wall at the ground'),
  stress('sigma_1', 'K_a * (surcharge + gamma * L_1)', 'pressure at the water level'),
  stress('sigma_2', 'K_a * (surcharge + gamma * L_1 + gamma_b * L_2)', 'pressure at formation'),
  lineForce('P_1', '(sigma_q + sigma_1) / 2 * L_1', 'force above the water'),
  lineForce('P_2', '(sigma_1 + sigma_2) / 2 * L_2', 'force between water and formation'),
]

/** What is driven, and what section it needs. */
const wall: readonly Step[] = [
  height('D_d', '(1 + longer) * D_0', 'embedment to drive', das),
  height('L_w', 'depth + D_d', 'length of the sheet piles'),
  when(
    { given: 'driven' },
    {
      yes: [check('deep_enough', 'driven >= D_d', { says: 'the planned embedment is enough', source: das })],
    },
  ),
  when(
    { given: 'steel_stress' },
    {
      yes: [
        step('W_req', 'M_max / steel_stress', {
          says: 'section modulus that the wall needs, for one length of it',
          symbol: 'W_y',
          unit: { SI: 'cm^3/m', US: 'in^3/ft' },
          source: cite('statics'),
        }),
      ],
    },
  ),
]

/** Pressure behind the wall, balance below formation, embedment and section. */
export const cantileverSheetingSteps: readonly Step[] = [
  water,
  ...behind,
  when(
    { choice: 'below', is: ['sand'] },
    {
      yes: [...inSand, ...wall],
      no: [when({ given: 'c_below' }, { yes: [...inClay, ...wall] })],
    },
  ),
]
