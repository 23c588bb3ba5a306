import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { compactionInputs } from './compaction-inputs.ts'
import { compactionSteps } from './compaction-steps.ts'

/** Relative compaction from sand-cone tests, and the lifts of a fill. */
export const compaction = defineModule({
  id: 'compaction',
  version: '1.0.1',
  title: 'Compaction of formation and fill',
  asks: 'Is the formation or the fill compacted as required, by sand-cone tests, and how many lifts does it take?',
  inputs: compactionInputs,
  steps: compactionSteps,
  results: ['R_least', 'n_lift', 'n_due', 'rho_dry_1', 'gamma_1'],
  covers: ['formation'],
  drawing: ['proctor', 'R_req', 'lift'],
  schedule: { title: 'Field density tests', list: 'tests', columns: ['test', 'V_hole', 'w', 'rho_dry', 'R'] },
  limits: [
    limit('min(tests.m_hole) > 0 kg', {
      says: 'sand went into every hole',
      advice: 'Compare the masses of the jar before and after, and that of the sand in the cone',
      otherwise: 'refuse',
      on: 'tests',
    }),
    limit('max(tests.r_zero) <= 1', {
      says: 'no test is denser than soil without air',
      advice: 'Such a test is a slip: weigh again, dry again, or look at the specific gravity',
      otherwise: 'warn',
      on: 'tests',
      source: cite('das-geotechnical', 'zero air voids'),
    }),
    limit('max(tests.R) <= 1.05', {
      says: 'no test is more than 5 % above the maximum of the laboratory',
      advice: 'The laboratory test is perhaps of another soil, or wants a correction for gravel',
      otherwise: 'warn',
      on: 'tests',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'The laboratory test is of the same soil; gravel kept back by its sieve wants a correction.',
    'Few tests prove little: look at every lift, roll the formation and watch for soft places, and test where it looks worst.',
    'Beside walls and over pipes compact with light plant in thin lifts, and on both sides of the box by turns.',
    'No fill goes on frozen, soft or flooded ground.',
  ],
  published: [
    {
      id: 'com-1',
      source: 'B. M. Das, Principles of Geotechnical Engineering, sand-cone test',
      status: 'memory',
      says: 'sand of `1570 kg/m^3`, cone 0.545 kg, jar 7.59 then 4.78 kg, soil 3.007 kg at 10.2 % of water',
      inputs: {
        proctor: 'standard Proctor',
        rho_max: '1900 kg/m^3',
        R_req: '0.95',
        G_s: '2.7',
        rho_sand: '1570 kg/m^3',
        cone_sand: '0.545 kg',
        tests: [{ jar_before: '7.59 kg', jar_after: '4.78 kg', m_wet: '3.007 kg', w: '10.2 percent' }],
        fill: '1 m',
        lift: '0.2 m',
        tests_a_lift: '1',
      },
      answers: { gamma_1: '20.45 kN/m^3' },
    },
  ],
  example: {
    proctor: 'modified Proctor',
    rho_max: '1960 kg/m^3',
    R_req: '95 percent',
    G_s: '2.66',
    rho_sand: '1540 kg/m^3',
    cone_sand: '1.60 kg',
    tests: [
      {
        test: 'formation at the north end',
        jar_before: '6.80 kg',
        jar_after: '3.25 kg',
        m_wet: '2.58 kg',
        w: '7.8 percent',
      },
      {
        test: 'formation at the south end',
        jar_before: '6.75 kg',
        jar_after: '3.11 kg',
        m_wet: '2.69 kg',
        w: '8.4 percent',
      },
    ],
    fill: '2.4 m',
    lift: '0.2 m',
    tests_a_lift: '2',
  },
})
