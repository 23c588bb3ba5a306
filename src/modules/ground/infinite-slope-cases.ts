import type { PublishedCase } from '../module.ts'

const loaded = { below: 'stronger', gamma: '17.8 kN/m^3', surcharge: '0 kPa', factor: '1' } as const

/** Cases of `infinite-slope`; the recalled one was recomputed. */
export const infiniteSlopeCases: readonly PublishedCase[] = [
  {
    id: 'slo-1',
    source:
      'B. M. Das, Principles of Geotechnical Engineering, infinite slope with seepage: 6 m on rock, 15 degrees, 17.8 kN/m³ saturated, 10 kPa, 20 degrees',
    status: 'memory',
    says: 'water seeping to the surface: 0.375 + 0.61',
    inputs: {
      ...loaded,
      slope: '15 deg',
      plane_depth: '6 m',
      gamma_sat: '17.8 kN/m^3',
      phi: '20 deg',
      c: '10 kPa',
      water_height: '6 m',
    },
    answers: { F_z: '0.985' },
    tolerance: { units: 1 },
  },
  {
    id: 'slo-2',
    source: 'Dry sand stands at its angle of friction: by hand, tan 30 over tan 20 degrees',
    status: 'computed',
    says: 'dry sand without cohesion, at any depth',
    inputs: {
      ...loaded,
      slope: '20 deg',
      plane_depth: '3 m',
      gamma_sat: '20 kN/m^3',
      phi: '30 deg',
      water_height: '0 m',
    },
    answers: { F_z: '1.5863' },
  },
  {
    id: 'slo-3',
    source: 'The same full of water: by hand, (20 - 9.81) / 20 of it',
    status: 'computed',
    says: 'seepage to the surface leaves about half',
    inputs: {
      ...loaded,
      slope: '20 deg',
      plane_depth: '3 m',
      gamma_sat: '20 kN/m^3',
      phi: '30 deg',
      water_height: '3 m',
    },
    answers: { F_z: '0.80820' },
  },
]
