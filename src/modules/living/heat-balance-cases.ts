import type { CaseInput, PublishedCase } from '../module.ts'

const room = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  groups: [{ count: '10 person', activity: 'seated at rest' }],
  equipment: '0 W',
  supply: '100 m^3/hr',
  outdoor: '20 degC',
  humidity: '50 percent',
  people_at: '24 degC',
  limit_temperature: '24 degC',
  width: '4 m',
  height: '2 m',
  box_length: '6 m',
  cover: '1 m',
  wall: '0.3 m',
  soil_conductivity: '1.5 W/(m*K)',
  ground_mean: '10 degC',
  ground_swing: '12 K',
  coldest: '35 day',
  date: '35 day',
  diffusivity: '0.05 m^2/day',
  ...more,
})
const kusuda =
  'Kusuda and Achenbach 1965, the form with the lag of depth, worked apart: mean 10, swing 12, 0.05 m²/day, 2 m deep'

/** The table of heat by person, the ground over the year, and the fit of the shape factor in its other form. */
export const heatBalanceCases: readonly PublishedCase[] = [
  {
    id: 'H7',
    source: 'W. P. Jones, Air Conditioning Engineering, 5th ed., Table 7.16',
    status: 'looked up',
    says: 'ten people seated at rest at 24 °C',
    inputs: room({}),
    answers: { P_sens: '750 W', P_lat: '400 W' },
  },
  {
    id: 'H5a',
    source: kusuda,
    status: 'computed',
    says: 'the ground on the coldest day of the surface',
    inputs: room({}),
    answers: { theta_g: '6.467 degC', k_z: '0.43614', t_lag: '48.20 day' },
  },
  {
    id: 'H5b',
    source: kusuda,
    status: 'computed',
    says: 'the ground half a year later',
    inputs: room({ date: '217.5 day' }),
    answers: { theta_g: '13.533 degC' },
  },
  {
    id: 'H8',
    source:
      'J. P. Holman, Heat Transfer, Table 3-1: 1.685 with the logarithm to base 10 (looked up); 4 by 3 m, 1 m deep, by hand',
    status: 'computed',
    says: 'shape factor of one metre of a box',
    inputs: room({ height: '3 m', box_length: '1 m' }),
    answers: { S_g: '7.27 m' },
  },
]
