import type { PublishedCase } from '../module.ts'

const ground = { gamma: '18 kN/m^3', gamma_sat: '20 kN/m^3', gamma_c: '24 kN/m^3', wall: '0.2 m', cover: '0 m' }

/** Published and worked cases of `flotation`. */
export const flotationCases: readonly PublishedCase[] = [
  {
    id: 'flo-1',
    source:
      'A. Bond and A. Harris, Decoding Eurocode 7, two-storey basement (web reprint); 18 m wide is inferred from 1324/73.6',
    status: 'looked up',
    says: 'a metre of a basement 7.5 m deep in water to the surface, factors 1.1 and 0.9',
    inputs: {
      ...ground,
      method: 'EN 1997-1 UPL',
      plan_length: '1 m',
      plan_width: '18 m',
      roof: '0.3 m',
      clear: '6.7 m',
      raft: '0.5 m',
      box_weight: '1068 kN',
      water_depth: '0 m',
      water_building: '7.5 m',
      gamma_dst: '1.1',
    },
    answers: { u_fin: '73.6 kPa', U_fin: '1324 kN', demand_fin: '1456.8 kN', hold_fin: '960.8 kN' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'flo-2',
    source:
      'EN 1997-1 Eq. 2.8 with the recommended factors of Table A.15, worked by hand: `9.81 * 3 * 20`; `0.9 * 700`',
    status: 'computed',
    says: 'a box of 5 by 4 m in 3 m of water, 700 kN',
    inputs: {
      ...ground,
      method: 'EN 1997-1 UPL',
      plan_length: '5 m',
      plan_width: '4 m',
      roof: '0.3 m',
      clear: '2.4 m',
      raft: '0.3 m',
      box_weight: '700 kN',
      water_depth: '0 m',
      water_building: '0 m',
    },
    answers: { demand_fin: '588.6 kN', hold_fin: '630.0 kN', demand_build: '588.6 kN', hold_build: '630.0 kN' },
    tolerance: { relative: 0.001 },
  },
]
