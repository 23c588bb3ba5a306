import type { PublishedCase } from '../module.ts'

const box = {
  length: '4 m',
  width: '3 m',
  height: '2.4 m',
  wall: '0.3 m',
  roof: '0.4 m',
  raft: '0.35 m',
  toe: '0 m',
  blinding: '0 m',
  screed: '0 m',
  cover: '0 m',
  working_space: '0 m',
  batter: '0',
  steel_rate: '100 kg/m^3',
  waste_concrete: '0',
  waste_steel: '0',
  waste_sheet: '0',
}

/** Sums worked apart, where the mean of the end areas is far off in the second, and two volumes printed elsewhere. */
export const quantitiesCases: readonly PublishedCase[] = [
  {
    id: 'qty-1',
    source: 'Prismatic sums worked apart: room of 4 by 3 by 2.4 m, walls 0.3, roof 0.4, raft 0.35 m',
    status: 'computed',
    says: 'concrete of the parts, inner forms of the walls, and the whole with the room: 52.164 outside',
    inputs: box,
    answers: { V_w: '10.944 m^3', V_r: '6.624 m^3', V_b: '5.796 m^3', A_in: '33.6 m^2', V_s: '52.164 m^3' },
  },
  {
    id: 'qty-2',
    source: 'Prismoid worked apart: pit of 6 by 5 m at the foot, 3 m deep, sides 1 in 1',
    status: 'computed',
    says: '225; the mean of the end areas would give 243',
    inputs: {
      ...box,
      height: '2.0 m',
      cover: '0.2 m',
      blinding: '0.05 m',
      working_space: '0.7 m',
      batter: '1',
    },
    answers: { A_1: '30 m^2', A_2: '72 m^2', A_3: '132 m^2', V_ex: '225.0 m^3' },
  },
  {
    id: 'qty-3',
    source: 'Moscow Mathematical Papyrus, problem 14: 6 high, 4 by 4 at one end and 2 by 2 at the other make 56',
    status: 'memory',
    says: 'excavation as such a frustum, upside down',
    inputs: {
      ...box,
      length: '1 m',
      width: '1 m',
      height: '4.25 m',
      cover: '1 m',
      working_space: '0.2 m',
      batter: '1 / 6',
    },
    answers: { A_1: '4 m^2', A_3: '16 m^2', V_ex: '56 m^3' },
  },
  {
    id: 'qty-4',
    source: 'Trade table of ready-mixed concrete: a cubic yard covers 81 square feet 4 in thick',
    status: 'memory',
    says: 'raft of 9 by 9 ft, 4 in thick',
    inputs: { ...box, length: '7 ft', width: '7 ft', height: '8 ft', wall: '1 ft', roof: '1 ft', raft: '4 in' },
    answers: { V_b: '1.00 yd^3' },
  },
]
