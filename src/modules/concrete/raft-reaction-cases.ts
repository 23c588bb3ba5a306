import type { PublishedCase } from '../module.ts'

/** Loads and places of twelve columns, from the middle of the mat. */
const columns = [
  ['400 kN', '500 kN', '450 kN', '10.5 m'],
  ['1500 kN', '1500 kN', '1200 kN', '3.5 m'],
  ['1500 kN', '1500 kN', '1200 kN', '-3.5 m'],
  ['400 kN', '500 kN', '350 kN', '-10.5 m'],
].flatMap(([left = '', middle = '', right = '', y = '']) => [
  { permanent: left, x: '-8 m', y },
  { permanent: middle, x: '0 m', y },
  { permanent: right, x: '8 m', y },
])

/** Equilibrium by hand, and the mat of a textbook, its weight left out as the book does. */
export const raftReactionCases: readonly PublishedCase[] = [
  {
    id: 'raft-1',
    source: 'Equilibrium: (total down - weight of the raft) / area, for a rigid raft under a central load',
    status: 'computed',
    says: '1600 kN permanent and 200 kN live on 8 m by 5 m, 0.5 m thick at `25 kN/m^3`: 500 kN of raft, `40 m^2`',
    inputs: {
      loads: [{ permanent: '1600 kN', live: '200 kN' }],
      raft_length: '8 m',
      raft_width: '5 m',
      raft_thickness: '0.5 m',
      concrete_weight: '25 kN/m^3',
      combination: 'IS 456',
    },
    answers: {
      W_r: '500 kN',
      p_gross: '57.5 kN/m^2',
      g_k: '40.0 kN/m^2',
      q_k: '5.0 kN/m^2',
      w_u: '67.5 kN/m^2',
    },
  },
  {
    id: 'raft-2',
    source:
      'B. M. Das, Principles of Foundation Engineering, mat of 16.5 by 21.5 m under twelve columns of 11 000 kN together',
    status: 'memory',
    says: 'mean pressure, and eccentricities of 0.44 m and 0.1 m',
    inputs: {
      loads: columns,
      raft_length: '16.5 m',
      raft_width: '21.5 m',
      raft_thickness: '1 mm',
      concrete_weight: '1e-6 kN/m^3',
      combination: 'IS 456',
    },
    answers: { p_gross: '31.0 kN/m^2', e_x: '-0.44 m', e_y: '0.1 m' },
  },
]
