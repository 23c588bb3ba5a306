import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, step, when } from '../words.ts'
import { soilTreatmentCases } from './soil-treatment-cases.ts'
import { litres, soilTreatmentInputs } from './soil-treatment-inputs.ts'

const practice = cite('termite-practice')

/** Where the record of the work is given: no less was used than the rate wants. */
const record = (of: 'area' | 'edge') =>
  when(
    { given: `used_${of}` },
    { yes: [check(`${of}_used`, `used_${of} >= V_${of}`, { says: 'no less was used than the rate wants' })] },
  )

/** Emulsion against termites by the rates of the standard and the label, and what was used of it. */
export const soilTreatment = defineModule({
  id: 'soil-treatment',
  version: '1.0.0',
  title: 'Treatment of the ground against termites',
  asks: 'How much emulsion does the ground below and beside the box want against termites, and where?',
  inputs: soilTreatmentInputs,
  steps: [
    each('areas', [
      step('V_area', 'area * rate', { says: 'emulsion', symbol: 'V_A', unit: litres, source: practice }),
      record('area'),
    ]),
    each('edges', [
      step('V_edge', 'run * edge_rate', { says: 'emulsion', symbol: 'V_e', unit: litres, source: practice }),
      record('edge'),
    ]),
    step('V_mix', '(sum(areas.V_area) + sum(edges.V_edge)) * (1 + spare)', {
      says: 'emulsion in all, with the spare',
      symbol: 'V_em',
      unit: litres,
      source: cite('statics'),
    }),
    step('V_product', 'V_mix * dose', { says: 'product in it', symbol: 'V_pr', unit: litres, source: cite('statics') }),
    check('far_enough', 'nearest >= keep_away', {
      says: 'well, cistern, drain and air intake are far enough away',
      aspect: 'geometry',
    }),
  ],
  results: ['V_mix', 'V_product'],
  covers: ['termites'],
  drawing: ['dose', 'V_mix', 'V_product'],
  schedule: {
    title: 'Surfaces treated against termites, without the edges',
    list: 'areas',
    columns: ['surface', 'area', 'rate', 'V_area'],
  },
  limits: [
    {
      holds: { choice: 'ground', is: ['moist'] },
      says: 'the ground takes the emulsion up',
      advice: 'Wait: on wet ground it runs off into the water',
      otherwise: 'refuse',
      on: 'ground',
      source: practice,
    },
  ],
  cautions: [
    'The standard itself was not read: published pages disagree about its rates. Rate and dose are those of the registered label and of the law of the place.',
    'The barrier is whole or it is none: no gap at pipes, joints and steps, and nobody digs in it afterwards.',
    'People who mix and spray are trained and wear what the label says; the shelter stands open and aired before anybody stays in it.',
    'Never in or near water: not in a pit that is being pumped, and not where the pumped water goes.',
  ],
  published: soilTreatmentCases,
  example: {
    areas: [
      { surface: 'bottom of the pit under the raft', area: '9.2 m * 5.8 m', rate: '5 L/m^2' },
      { surface: 'face of the fill against the walls', area: '85 m^2', rate: '7.5 L/m^2' },
    ],
    edges: [{ edge: 'outside perimeter', run: '31 m', edge_rate: '2.25 L/m' }],
    dose: '0.2 percent',
    spare: '5 percent',
    nearest: '45 m',
    keep_away: '30 m',
    ground: 'moist',
  },
})
