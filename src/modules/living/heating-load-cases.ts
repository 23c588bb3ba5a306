import type { CaseInput, PublishedCase } from '../module.ts'

const room = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  groups: [{ count: '10 person', activity: 'seated at rest' }],
  equipment: '0 W',
  supply: '90 m^3/hr',
  outdoor: '0 degC',
  humidity: '80 percent',
  least_temperature: '15 degC',
  days: '14 day',
  warm_up: '3 day',
  heater: '5 kW',
  width: '4 m',
  height: '2.5 m',
  box_length: '6 m',
  cover: '1 m',
  wall: '0.3 m',
  soil_conductivity: '1.5 W/(m*K)',
  ground_mean: '10 degC',
  ground_swing: '12 K',
  diffusivity: '0.05 m^2/day',
  ...more,
})
const differences = 'Finite differences over the three dimensions by another program, on two grids, extrapolated'
const damp = (outdoor: string, humidity: string) => room({ outdoor, humidity, supply: '1e6 m^3/hr' })
const tables = 'Psychrometric tables, dew point of air'

/** Heat of people, the wave of the ground, the shape of the whole box and dew points. */
export const heatingLoadCases: readonly PublishedCase[] = [
  {
    id: 'HL1',
    source: 'W. P. Jones, Air Conditioning Engineering, 5th ed., Table 7.16',
    status: 'looked up',
    says: 'ten people seated at rest at 20 °C',
    inputs: room({}),
    answers: { P_sens: '900 W', P_lat: '250 W' },
  },
  {
    id: 'HL2',
    source: 'Kusuda and Achenbach 1965, worked apart: swing 12, 0.05 m²/day, 2 m deep',
    status: 'computed',
    says: 'what is left of the swing at 2 m, and when it comes',
    inputs: room({ cover: '2 m' }),
    answers: { k_z: '0.43614', t_lag: '48.20 day' },
  },
  {
    id: 'HL3a',
    source: differences,
    status: 'computed',
    says: 'shape factor of a box of 4 by 6 by 2.5 m, 1 m deep',
    inputs: room({}),
    answers: { S_b: '72 m' },
    tolerance: { relative: 0.01 },
  },
  {
    id: 'HL3b',
    source: differences,
    status: 'computed',
    says: 'shape factor of a box of 4 by 4 by 2.5 m, 3 m deep',
    inputs: room({ box_length: '4 m', cover: '3 m' }),
    answers: { S_b: '38.9 m' },
    tolerance: { relative: 0.01 },
  },
  {
    id: 'HL4a',
    source: tables,
    status: 'memory',
    says: 'air of 20 °C and 50 %',
    inputs: damp('20 degC', '50 percent'),
    answers: { theta_d: '9.3 degC' },
  },
  {
    id: 'HL4b',
    source: tables,
    status: 'memory',
    says: 'air of 10 °C and 80 %',
    inputs: damp('10 degC', '80 percent'),
    answers: { theta_d: '6.7 degC' },
  },
]
