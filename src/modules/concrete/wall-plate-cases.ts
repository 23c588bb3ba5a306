import type { CaseInput, PublishedCase } from '../module.ts'

/** Height 1 m and 1000 kPa at the base, so that coefficients times 1000 print. */
const wall = (edges: string, ratio: string): Readonly<Record<string, CaseInput>> => ({
  height: '1 m',
  width: `${ratio} * 1 m`,
  pressure_top: '0 kPa',
  pressure_base: '1000 kPa',
  edges,
})

const ofTanks = (ratio: string, printed: string): PublishedCase => ({
  id: `plate-1-${ratio}`,
  source: 'PCA rectangular tanks; IS 3370 (Part 4):1967, Table 3: 0.035, 0.086, 0.126 (the last within 1.5 %)',
  status: 'memory',
  says: `top free, triangular load, width ${ratio} times the height; coefficient times 1000`,
  inputs: wall('top free, others fixed', ratio),
  answers: { M_base: printed },
  tolerance: { relative: 0.015 },
})

const ritz = 'tables of walls as plates, computed apart from this program (Ritz, Legendre polynomials)'

/** Coefficients of walls printed or computed elsewhere. */
export const wallPlateCases: readonly PublishedCase[] = [
  ofTanks('1', '-35 kN*m/m'),
  ofTanks('2', '-86 kN*m/m'),
  ofTanks('3', '-126 kN*m/m'),
  {
    id: 'plate-3',
    source: ritz,
    status: 'computed',
    says: 'top free, triangular load, as wide as high; coefficient times 1000',
    inputs: wall('top free, others fixed', '1'),
    answers: { M_mid: '-29.8 kN*m/m', M_hor: '13.2 kN*m/m' },
    tolerance: { relative: 0.02 },
  },
  {
    id: 'plate-4',
    source: ritz,
    status: 'computed',
    says: 'top hinged, triangular load, twice as wide as high; coefficients times 1000',
    inputs: wall('top hinged, others fixed', '2'),
    answers: { M_base: '-62.1 kN*m/m', M_mid: '-36.7 kN*m/m', M_vert: '26.1 kN*m/m' },
    tolerance: { relative: 0.02 },
  },
  {
    id: 'plate-5',
    source: ritz,
    status: 'computed',
    says: 'top free, triangular load, twice as wide as high: along the free top; coefficient times 1000',
    inputs: wall('top free, others fixed', '2'),
    answers: { M_hor: '27.7 kN*m/m' },
    tolerance: { relative: 0.02 },
  },
]
