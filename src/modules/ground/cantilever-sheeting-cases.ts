import type { CaseInput, PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Foundation Engineering, cantilever sheet pile in sand'

const sand: Readonly<Record<string, CaseInput>> = {
  below: 'sand',
  water: 'level on both sides',
  depth: '5 m',
  water_depth: '2 m',
  surcharge: '0 kPa',
  gamma: '15.9 kN/m^3',
  gamma_sat: '19.33 kN/m^3',
  phi: '32 deg',
}

/** Cases of `cantilever-sheeting`. The embedment printed in the book was found by trial and is not asserted. */
export const cantileverSheetingCases: readonly PublishedCase[] = [
  {
    id: 'she-1',
    source: das,
    status: 'memory',
    says: '2 m above the water, 3 m below it, friction 32 degrees: pressures, force and moment',
    inputs: sand,
    answers: {
      sigma_1: '9.763 kPa',
      sigma_2: '18.53 kPa',
      L_3: '0.66 m',
      P: '58.32 kN/m',
      y_P: '2.23 m',
      M_max: '209.39 kN*m/m',
    },
    tolerance: { relative: 0.002 },
  },
  {
    id: 'she-2',
    source: `${das}, its equation of the fourth power solved for this project; by trial the book finds 4.8 m`,
    status: 'computed',
    says: 'the same: depth of the toe below the level of no pressure',
    inputs: sand,
    answers: { L_4: '4.742 m' },
  },
  {
    id: 'she-4',
    source: 'The equations for clay below formation in the same book, by hand',
    status: 'computed',
    says: '4 m of submerged sand over clay of 40 kPa',
    inputs: {
      below: 'clay',
      water: 'level on both sides',
      depth: '4 m',
      water_depth: '0 m',
      surcharge: '0 kPa',
      gamma: '18 kN/m^3',
      gamma_sat: '18 kN/m^3',
      phi: '30 deg',
      c_below: '40 kPa',
    },
    answers: { P: '21.84 kN/m', D_0: '1.190 m', M_max: '30.99 kN*m/m' },
    tolerance: { relative: 0.001 },
  },
]
