import type { PublishedCase } from '../module.ts'

/** Worked out by hand from equilibrium; no printed example with all its numbers was at hand. */
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
]
