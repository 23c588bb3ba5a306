import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, each, label, length, list, quantity, ratio, step, when } from '../words.ts'
import { areaUnit, lengthUnit } from './ground-units.ts'
import { soilTreatmentCases } from './soil-treatment-cases.ts'

const litres = { SI: 'L', US: 'gal' } as const
const practice = cite('termite-practice')

const used = (symbol: string) =>
  quantity('volume', {
    says: 'emulsion that was used, from the record of the work',
    symbol,
    unit: litres,
    least: '0 L',
    optional: true,
  })

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
  inputs: {
    areas: list('surfaces treated by area, each with its rate', {
      note: 'Bottom and sides of the pit, fill under a raft, the upright face of fill against walls',
      least: 1,
      most: 12,
      fields: {
        surface: label({ says: 'what is treated', optional: true }),
        area: quantity('area', { says: 'area', symbol: 'A', unit: areaUnit, above: '0 m^2' }),
        rate: quantity('length', {
          says: 'emulsion for each area',
          symbol: 'r_A',
          unit: { SI: 'L/m^2', US: 'gal/ft^2' },
          above: '0 L/m^2',
          usual: ['3 L/m^2', '10 L/m^2'],
        }),
        used_area: used('V_u'),
      },
    }),
    edges: list('edges treated by length, each with its rate', {
      note: 'The outside perimeter, in rods or a trench; round pipes and joints',
      least: 1,
      most: 12,
      fields: {
        edge: label({ says: 'what is treated', optional: true }),
        run: length({ says: 'length', symbol: 'l_e', unit: lengthUnit, above: '0 m' }),
        edge_rate: quantity('area', {
          says: 'emulsion for each length, to the full depth',
          symbol: 'r_l',
          unit: { SI: 'L/m', US: 'gal/ft' },
          above: '0 L/m',
          usual: ['1.5 L/m', '20 L/m'],
        }),
        used_edge: used('V_v'),
      },
    }),
    dose: ratio({
      says: 'product in the emulsion, volume in volume, by its label',
      symbol: 'c_p',
      unit: { SI: 'percent', US: 'percent' },
      above: '0',
      most: '0.2',
      usual: ['0.001', '0.1'],
    }),
    spare: ratio({
      says: 'spare for spills and dead volume',
      symbol: 'f_sp',
      unit: { SI: 'percent', US: 'percent' },
      least: '0',
      most: '0.5',
    }),
    nearest: length({
      says: 'distance to the nearest well, cistern, drain or air intake',
      symbol: 'd_near',
      unit: lengthUnit,
      least: '0 m',
    }),
    keep_away: length({
      says: 'distance to keep from it, by label and local law',
      symbol: 'd_keep',
      unit: lengthUnit,
      above: '0 m',
    }),
    ground: choice({
      says: 'state of the ground when it is treated',
      words: {
        moist: 'damp or dry, no rain due before it is covered',
        wet: 'wet or flooded, or rain due',
      },
    }),
  },
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
