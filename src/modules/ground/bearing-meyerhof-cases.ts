import type { PublishedCase } from '../module.ts'

const apart = 'Equations of Meyerhof 1963, worked apart from this program'
const sand = {
  width: '2 m',
  length: '3 m',
  depth: '1.5 m',
  load: '1500 kN',
  strength: 'drained',
  phi: '30 deg',
  c: '5 kPa',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '1 m',
} as const
const clay = { ...sand, strength: 'undrained', c_u: '60 kPa', water_depth: '20 m' } as const

/** Published cases of `bearing-meyerhof`. */
export const bearingMeyerhofCases: readonly PublishedCase[] = [
  {
    id: 'bea-3m',
    source: 'Table of bearing factors in foundation textbooks (Das, Bowles), friction of 30 degrees',
    status: 'memory',
    says: 'factors at 30 degrees',
    inputs: { ...sand, above: 'left out' },
    answers: { N_c: '30.14', N_q: '18.40', N_gamma: '15.67' },
  },
  {
    id: 'bea-7',
    source: apart,
    status: 'computed',
    says: 'rectangle in sand, depth counted, moment and horizontal load, water above the base',
    inputs: { ...sand, above: 'counted', M_B: '150 kN*m', H: '120 kN' },
    answers: { q_R: '877.49 kPa' },
  },
  {
    id: 'bea-8',
    source: apart,
    status: 'computed',
    says: 'rectangle on clay of 60 kPa, depth counted, horizontal load',
    inputs: { ...clay, above: 'counted', H: '120 kN' },
    answers: { q_gross: '386.57 kPa' },
  },
]
