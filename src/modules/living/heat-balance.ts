import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { heatBalanceCases } from './heat-balance-cases.ts'
import { heatBalanceInputs } from './heat-balance-inputs.ts'
import { heatBalanceSecond } from './heat-balance-second.ts'
import { heatBalanceSteps } from './heat-balance-steps.ts'

/** Temperature at which a room with people, equipment, fresh air and ground settles, and whether its walls stay dry. */
export const heatBalance = defineModule({
  id: 'heat-balance',
  version: '2.0.0',
  title: 'Heat balance of the room',
  asks: 'At what temperature does the room settle with people, equipment, fresh air and the ground, and do the walls stay dry?',
  inputs: heatBalanceInputs,
  steps: heatBalanceSteps,
  results: ['theta_in', 'P_sens', 'P_lat', 'theta_g', 'U_a', 'U_g', 'W_l'],
  covers: ['heat'],
  drawing: ['theta_in', 'supply'],
  limits: [
    limit('abs(min(max(theta_in / degC, 20), 26) - theta_r) <= 1', {
      says: 'the heat of people is read within 1 K of where the room settles',
      advice: 'Read at a higher temperature people warm the air too little, at a lower one they wet it too little',
      otherwise: 'warn',
      on: 'people_at',
      source: cite('jones'),
    }),
    limit('theta_in <= 26 degC', {
      says: 'the room settles no warmer than the table of heat by person goes',
      advice: 'Above 26 °C people warm the air less and wet it more than the last column says',
      otherwise: 'warn',
      on: 'people_at',
      source: cite('jones'),
    }),
    limit('box_length >= max(width, height)', {
      says: 'the box is at least as long as it is wide and high',
      advice: 'The shape factor is of a long box: turn width and length over',
      otherwise: 'warn',
      on: 'box_length',
      source: cite('holman'),
    }),
    limit('cover <= 1.5 * width', {
      says: 'the cover is not deep beside the width of the box',
      advice: 'The deeper the box the lower the fit stands: go by the second method',
      otherwise: 'warn',
      on: 'cover',
      source: cite('holman'),
    }),
    limit('theta_in > -20 degC and theta_in < 60 degC', {
      says: 'the room settles between frost and fire',
      advice: 'Beyond them neither the tables nor people hold',
      otherwise: 'warn',
      on: 'supply',
      source: cite('mass-balance'),
    }),
  ],
  cautions: [
    'The balance is that of a stay without end. In the first days walls and ground take up more; in months of use the ground round the box warms.',
    'The ends of the box are not counted: more heat is lost than this says. Keeping warm in winter is another calculation.',
    'The table of heat by person begins at 20 °C: a room that settles cooler is a little warmer than this says.',
    'Heat stress comes within hours in a crowded closed room in summer: where the check is not satisfied bring in more air, or cool.',
    'Walls that are not dry drip, and wet stores: where the air outdoors is damp and warm, fresh air wets a cold shelter.',
    'Never warm the room with an open flame.',
  ],
  second: heatBalanceSecond,
  published: heatBalanceCases,
  example: {
    groups: [
      { group: 'at rest', count: '9 person', activity: 'seated at rest' },
      { group: 'on watch', count: '3 person', activity: 'office work' },
    ],
    equipment: '150 W',
    supply: '130 m^3/hr',
    outdoor: '17 degC',
    humidity: '60 percent',
    people_at: '22 degC',
    limit_temperature: '26 degC',
    width: '5 m',
    height: '2.9 m',
    box_length: '8 m',
    cover: '1 m',
    wall: '0.3 m',
    soil_conductivity: '1.5 W/(m*K)',
    ground_mean: '9 degC',
    ground_swing: '6 K',
    coldest: '40 day',
    date: '210 day',
    diffusivity: '0.05 m^2/day',
  },
})
