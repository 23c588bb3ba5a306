import type { PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Geotechnical Engineering'

/** Cases of `base-uplift`; the recalled ones were recomputed. */
export const baseUpliftCases: readonly PublishedCase[] = [
  {
    id: 'upl-1',
    source: `${das}, cut in 9 m of saturated clay over sand with water 3.6 m above its top`,
    status: 'memory',
    says: 'greatest depth of cut, solids 2.68 and water content 30 per cent; the book cuts 7.136 off',
    inputs: {
      depth: '5 m',
      aquifer_top: '9 m',
      water_depth: '5.4 m',
      gamma_sat: '(2.68 + 0.30 * 2.68) / (1 + 0.30 * 2.68) * 9.81 kN/m^3',
      factor: '1',
      factor_gradient: '1',
    },
    answers: { depth_most: '7.13 m' },
    tolerance: { units: 1 },
  },
  {
    id: 'upl-2',
    source: `${das}, cut of 5 m in 7 m of clay of 1925 kg/m³ over sand with water 4.5 m above its top`,
    status: 'memory',
    says: 'water that must stand in the cut',
    inputs: {
      depth: '5 m',
      aquifer_top: '7 m',
      water_depth: '2.5 m',
      gamma_sat: '1925 kg/m^3 * 9.81 m/s^2',
      factor: '1',
      factor_gradient: '1',
    },
    answers: { flood: '0.65 m' },
  },
  {
    id: 'upl-3',
    source: 'Terzaghi, critical gradient of soil with solids 2.68 and void ratio 0.8, by hand: 1.68 / 1.8',
    status: 'computed',
    says: 'critical gradient from solids and voids',
    inputs: {
      depth: '5 m',
      aquifer_top: '7 m',
      water_depth: '4 m',
      gamma_sat: '(2.68 + 0.8) / (1 + 0.8) * 9.81 kN/m^3',
      factor: '1',
      factor_gradient: '1',
    },
    answers: { i_c: '0.9333' },
  },
]
