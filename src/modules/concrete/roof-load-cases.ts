import type { PublishedCase } from '../module.ts'

const relative = { relative: 0.001 }
const oneLayer = (unit_weight: string) => [{ thickness: '1 m', unit_weight }]

/** Combinations worked out from the clauses named (clauses from memory), and one textbook example. */
export const roofLoadCases: readonly PublishedCase[] = [
  {
    id: 'roof-1',
    source: 'IS 456:2000, Table 18, 1.5 (DL + IL)',
    status: 'computed',
    says: 'dead load 20 and imposed load `5 kN/m^2`',
    inputs: { layers: oneLayer('20 kN/m^3'), live_load: '5 kN/m^2', combination: 'IS 456' },
    answers: { w_u: '37.5 kN/m^2' },
    tolerance: relative,
  },
  {
    id: 'roof-2',
    source: 'ACI 318-19, Table 5.3.1, equations 5.3.1a and 5.3.1b',
    status: 'computed',
    says: 'dead load 20 and live load `5 kN/m^2`: both govern together',
    inputs: { layers: oneLayer('20 kN/m^3'), live_load: '5 kN/m^2', combination: 'ACI 318' },
    answers: { w_a: '28.0 kN/m^2', w_b: '32.0 kN/m^2', w_u: '32.0 kN/m^2' },
    tolerance: relative,
  },
  {
    id: 'roof-3',
    source: 'ACI 318-19, Table 5.3.1, equations 5.3.1a and 5.3.1b',
    status: 'computed',
    says: 'dead load 50 and live load `2 kN/m^2`: dead load alone governs',
    inputs: { layers: oneLayer('50 kN/m^3'), live_load: '2 kN/m^2', combination: 'ACI 318' },
    answers: { w_a: '70.0 kN/m^2', w_b: '63.2 kN/m^2', w_u: '70.0 kN/m^2' },
    tolerance: relative,
  },
  {
    id: 'roof-4a',
    source: 'EN 1990:2002, expression 6.10',
    status: 'computed',
    says: 'permanent load 20 and variable load `5 kN/m^2`',
    inputs: { layers: oneLayer('20 kN/m^3'), live_load: '5 kN/m^2', combination: 'EN 1990 6.10' },
    answers: { w_u: '34.5 kN/m^2' },
    tolerance: relative,
  },
  {
    id: 'roof-4b',
    source: 'EN 1990:2002, expressions 6.10a and 6.10b',
    status: 'computed',
    says: 'permanent load 20 and variable load `5 kN/m^2`, `psi_0 == 0.7`, `xi == 0.85`',
    inputs: {
      layers: oneLayer('20 kN/m^3'),
      live_load: '5 kN/m^2',
      combination: 'EN 1990 6.10a and 6.10b',
      psi_0: '0.7',
    },
    answers: { w_a: '32.25 kN/m^2', w_b: '30.45 kN/m^2', w_u: '32.25 kN/m^2' },
    tolerance: relative,
  },
  {
    id: 'roof-5',
    source:
      'A. H. Nilson, D. Darwin and C. W. Dolan, Design of concrete structures, example of a two-way slab by coefficients (slab 6.5 in, live load 137 psf)',
    status: 'memory',
    says: 'weight of the slab and factored live load of a corner panel',
    inputs: {
      layers: [{ thickness: '6.5 in', unit_weight: '150 pcf' }],
      live_load: '137 psf',
      combination: 'ACI 318',
    },
    answers: { g_k: '81 psf', q_u: '219 psf' },
  },
]
