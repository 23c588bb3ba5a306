import type { PublishedCase } from '../module.ts'

const dry = { gamma: '20 kN/m^3', gamma_sat: '20 kN/m^3', water_depth: '30 m', approach: 'DA1-1' } as const
const square = { width: '2 m', length: '2 m', load: '100 kN' } as const

/** Published cases of `bearing-en-1997`. */
export const bearingEn1997Cases: readonly PublishedCase[] = [
  {
    id: 'bea-3',
    source: 'Table of bearing factors in foundation textbooks (Das, Bowles), friction of 30 degrees',
    status: 'memory',
    says: 'factors of Prandtl and Reissner at 30 degrees',
    inputs: { ...dry, ...square, depth: '1 m', strength: 'drained', phi: '30 deg' },
    answers: { N_c: '30.14', N_q: '18.40' },
  },
  {
    id: 'bea-4',
    source: 'EN 1997-1:2004, D.4, evaluated by hand',
    status: 'computed',
    says: 'square of 2 m, 1 m deep in dry sand of 20 `kN/m^3` and 30 degrees',
    inputs: { ...dry, ...square, depth: '1 m', strength: 'drained', phi: '30 deg' },
    answers: { q_gross: '833.3 kPa' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'bea-5',
    source: 'EN 1997-1:2004, D.3, evaluated by hand',
    status: 'computed',
    says: 'square on clay of 50 kPa under 20 kPa of overburden',
    inputs: { ...dry, ...square, depth: '1 m', strength: 'undrained', c_u: '50 kPa' },
    answers: { q_gross: '328.50 kPa' },
  },
  {
    id: 'bea-6',
    source: 'EN 1997-1:2004, D.4 with factors M2, worked apart from this program',
    status: 'computed',
    says: 'moment and horizontal load, water half a metre above the base',
    inputs: {
      approach: 'DA1-2',
      width: '2 m',
      length: '3 m',
      depth: '1.5 m',
      load: '1500 kN',
      M_B: '150 kN*m',
      H: '120 kN',
      strength: 'drained',
      phi: '32 deg',
      c: '5 kPa',
      gamma: '18 kN/m^3',
      gamma_sat: '20 kN/m^3',
      water_depth: '1 m',
    },
    answers: { q_R: '495.59 kPa', A_e: '5.3880 m^2', R_d: '2670.2 kN' },
  },
]
