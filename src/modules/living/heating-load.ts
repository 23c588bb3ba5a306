import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { heatingLoadCases } from './heating-load-cases.ts'
import { heatingLoadInputs } from './heating-load-inputs.ts'
import { heatingLoadSecond } from './heating-load-second.ts'
import { drawHeatingLoad } from './heating-load-sketch.ts'
import { heatingLoadSteps } from './heating-load-steps.ts'

/** How warm a buried room becomes in winter, what heating keeps it at a least temperature, and whether its walls stay dry. */
export const heatingLoad = defineModule({
  id: 'heating-load',
  version: '1.0.0',
  title: 'Heating load in winter',
  asks: 'How warm does the buried room become in winter without heating, what heating keeps it warm, and do its walls stay dry?',
  inputs: heatingLoadInputs,
  steps: heatingLoadSteps,
  results: ['theta_u', 'theta_z', 'P_need', 'E_heat', 'theta_gc', 'theta_d', 'theta_f', 'U_w', 'U_a', 'S_b'],
  covers: ['cold'],
  drawing: ['P_need', 'supply'],
  limits: [
    limit('min(width, height, box_length) > 2 * wall', {
      says: 'there is a room inside the walls',
      otherwise: 'refuse',
      on: 'wall',
      source: cite('statics'),
    }),
    limit('warm_up <= days', {
      says: 'the room is warm before the stay ends',
      otherwise: 'refuse',
      on: 'warm_up',
      source: cite('mass-balance'),
    }),
    limit('P_sens >= U_a * (theta_gc - outdoor)', {
      says: 'people and devices warm the fresh air to the temperature of the ground',
      advice: 'Where they do not, the ground warms the room, and less than this says: bring in less air, or warm it',
      otherwise: 'warn',
      on: 'supply',
      source: cite('mass-balance'),
    }),
    limit('theta_gc >= 0 degC', {
      says: 'the ground at the roof does not freeze',
      advice: 'Frozen soil conducts better: take its conductivity',
      otherwise: 'warn',
      on: 'cover',
      source: cite('kusuda'),
    }),
    limit('days <= 30 day', {
      says: 'the stay is within a month',
      advice: 'The ground is held as cold as on its coldest day: for longer stays that is too cold',
      otherwise: 'warn',
      on: 'days',
      source: cite('kusuda'),
    }),
  ],
  cautions: [
    'Before the stay the room is as cold as the ground at its roof on the coldest day; all of the ground round it is taken as cold as that.',
    'The rise over the ground is right within a tenth in the first days; at two weeks it stands low by up to a third.',
    'Groundwater that flows past, open doors, shafts and pipes through the roof take more heat: not counted.',
    'In the first hours, before the room is warm, walls are colder than here and may be wet.',
    'Never warm the room with an open flame or an engine: they use up the air, give off carbon monoxide and wet the walls.',
    'Cut the fresh air to keep warm only as far as carbon dioxide allows.',
  ],
  second: heatingLoadSecond,
  sketch: drawHeatingLoad,
  published: heatingLoadCases,
  example: {
    groups: [
      { group: 'at rest', count: '9 person', activity: 'seated at rest' },
      { group: 'on watch', count: '3 person', activity: 'office work' },
    ],
    equipment: '150 W',
    supply: '110 m^3/hr',
    outdoor: '-5 degC',
    humidity: '80 percent',
    least_temperature: '15 degC',
    days: '14 day',
    warm_up: '3 day',
    heater: '5 kW',
    width: '5 m',
    height: '2.9 m',
    box_length: '8 m',
    cover: '1.2 m',
    wall: '0.3 m',
    soil_conductivity: '1.5 W/(m*K)',
    ground_mean: '9 degC',
    ground_swing: '8 K',
    diffusivity: '0.05 m^2/day',
  },
})
