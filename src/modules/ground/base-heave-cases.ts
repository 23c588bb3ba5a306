import type { CaseInput, PublishedCase } from '../module.ts'

const pit: Readonly<Record<string, CaseInput>> = {
  depth: '5 m',
  pit_width: '6 m',
  pit_length: '6 m',
  gamma: '17.5 kN/m^3',
  surcharge: '0 kPa',
  c_below: '30 kPa',
  c_side: '30 kPa',
}

/** Cases of `base-heave`: both equations by hand, and the factor of a deep square. The recalled example of a third formula does not close and is not here. */
export const baseHeaveCases: readonly PublishedCase[] = [
  {
    id: 'hea-3',
    source: 'Terzaghi 1943 as in B. M. Das, Principles of Foundation Engineering, equation by hand',
    status: 'computed',
    says: 'deep clay: the strip is seven tenths of the width',
    inputs: pit,
    answers: { F_T: '3.302' },
  },
  {
    id: 'hea-4',
    source: 'Terzaghi 1943, equation by hand: 5.7 × 30 / (5 × (17.5 - 30 / 2))',
    status: 'computed',
    says: 'firm ground 2 m below formation: the strip is as wide as the clay is deep',
    inputs: { ...pit, clay_below: '2 m' },
    answers: { F_T: '13.68' },
  },
  {
    id: 'hea-5',
    source: 'Bjerrum and Eide 1956, equation by hand: 30 × 7.8 × 0.92 / (18 × 6 + 10)',
    status: 'computed',
    says: 'a pit as deep as it is wide and twice as long',
    inputs: {
      ...pit,
      depth: '6 m',
      pit_length: '12 m',
      gamma: '18 kN/m^3',
      surcharge: '10 kPa',
    },
    answers: { N_c: '7.176', F_B: '1.824' },
  },
  {
    id: 'hea-6',
    source: 'Skempton 1951 and Bjerrum and Eide 1956: factor 9 of a deep square cut',
    status: 'memory',
    says: 'a square shaft four times as deep as wide',
    inputs: { ...pit, depth: '8 m', pit_width: '2 m', pit_length: '2 m' },
    answers: { N_c: '9.0' },
  },
]
