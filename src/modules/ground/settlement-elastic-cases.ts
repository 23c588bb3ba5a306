import type { PublishedCase } from '../module.ts'

const surface = {
  depth: '0 m',
  pressure: '100 kPa',
  s_allow: '1 m',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '5 m',
  beneath: 'rock',
} as const

const halfSpace = (length: string, printed: string): PublishedCase => ({
  id: `set-1-${length}`,
  source: 'B. M. Das, table of influence factors of a flexible rectangle, centre, half-space',
  status: 'memory',
  says: `centre of a rectangle ${length} times as long as wide: ${printed} of pressure by width over modulus`,
  inputs: {
    ...surface,
    width: '1 m',
    length: `${length} m`,
    layers: [{ thickness: '100000 m', E: '0.1 MPa', nu: '0' }],
  },
  answers: { s_centre: `${printed} m` },
  tolerance: { units: 1 },
})

/** Published cases of `settlement-elastic`. */
export const settlementElasticCases: readonly PublishedCase[] = [
  halfSpace('1', '1.122'),
  halfSpace('2', '1.532'),
  halfSpace('5', '2.105'),
  halfSpace('10', '2.544'),
  {
    id: 'set-2',
    source: 'J. E. Bowles, Foundation Analysis and Design, table of the factors of Steinbrenner',
    status: 'memory',
    says: 'factors of a square on a layer ten half widths thick',
    inputs: {
      ...surface,
      width: '2 m',
      length: '2 m',
      layers: [{ thickness: '10 m', E: '10 MPa', nu: '0.3' }],
    },
    answers: { I_1_1: '0.498', I_2_1: '0.016' },
  },
]
