import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { each, label, length, limit, list, pressure, step, unitWeight } from '../words.ts'
import { combinationInputs, combinationSteps } from './load-combination.ts'
import { roofLoadCases } from './roof-load-cases.ts'

const areaLoad = { SI: 'kN/m^2', US: 'psf' }

/** Characteristic and factored load on a buried roof: its layers, everything else that stays, and the live load. */
export const roofLoad = defineModule({
  id: 'roof-load',
  version: '1.0.1',
  title: 'Load on the roof',
  asks: 'What does the roof slab carry, as it is and with the factors of the code?',
  inputs: {
    layers: list('what lies on the roof, and the roof slab itself, from the top down', {
      note: 'Each layer once; soil over a roof is a permanent load in all these codes',
      least: 1,
      most: 20,
      fields: {
        layer: label({ says: 'what the layer is', optional: true }),
        thickness: length({
          says: 'thickness',
          symbol: 't',
          unit: { SI: 'm', US: 'ft' },
          above: '0 m',
          most: '30 m',
          usual: ['2 mm', '6 m'],
        }),
        unit_weight: unitWeight({
          says: 'unit weight',
          note: 'Saturated, where the layer can fill with water',
          symbol: 'gamma',
          unit: { SI: 'kN/m^3', US: 'pcf' },
          above: '0 kN/m^3',
          most: '120 kN/m^3',
          usual: ['0.2 kN/m^3', '80 kN/m^3'],
        }),
      },
    }),
    other_permanent: pressure({
      says: 'other permanent load, in no layer',
      note: 'Ceiling, services, fixed plant',
      symbol: 'g_o',
      unit: areaLoad,
      least: '0 kN/m^2',
      default: '0 kN/m^2',
    }),
    live_load: pressure({
      says: 'live load on the ground above or on the roof',
      symbol: 'q_g',
      unit: areaLoad,
      least: '0 kN/m^2',
      usual: ['1 kN/m^2', '50 kN/m^2'],
    }),
    other_live: pressure({
      says: 'further live load at roof level',
      note: 'Such as a wheel load spread through the cover',
      symbol: 'q_o',
      unit: areaLoad,
      least: '0 kN/m^2',
      default: '0 kN/m^2',
    }),
    ...combinationInputs,
  },
  steps: [
    each('layers', [
      step('g_layer', 'thickness * unit_weight', { says: 'weight of the layer', symbol: 'g', unit: areaLoad }),
    ]),
    step('g_k', 'sum(layers.g_layer) + other_permanent', {
      says: 'characteristic permanent load',
      unit: areaLoad,
      source: cite('statics'),
    }),
    step('q_k', 'live_load + other_live', { says: 'characteristic live load', unit: areaLoad }),
    ...combinationSteps,
  ],
  results: ['w_u', 'w_k', 'g_k', 'q_k', 'g_u', 'q_u', 'w_qp'],
  covers: ['actions'],
  limits: [
    limit('g_k >= 2 * q_k', {
      says: 'the permanent load is at least twice the live load',
      advice: 'Under earth cover it is: look at the layers again',
      otherwise: 'warn',
      on: 'live_load',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Use the saturated unit weight for every layer that rain, a broken drain or ground water can fill; moist weight only above all water.',
    'Count the roof slab once: a slab module that adds its own weight must be given the load without it.',
    'A heavy roof carries nearly its full load for ever: use `w_qp` for crack width and deflection.',
    'Only permanent and live load are combined here. Vehicles, blast, wind, snow, earthquake and plant used to place the cover each need their own case.',
    'The cover may grow: landscaping, spoil heaps and stockpiles are loads. State the greatest cover allowed on a sign or in the manual.',
  ],
  published: roofLoadCases,
  example: {
    layers: [
      { layer: 'topsoil and fill', thickness: '1.5 m', unit_weight: '20 kN/m^3' },
      { layer: 'drainage gravel', thickness: '150 mm', unit_weight: '19 kN/m^3' },
      { layer: 'protection screed', thickness: '50 mm', unit_weight: '23 kN/m^3' },
      { layer: 'roof slab', thickness: '350 mm', unit_weight: '25 kN/m^3' },
    ],
    live_load: '5 kN/m^2',
    combination: 'IS 456',
  },
})
