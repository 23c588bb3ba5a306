import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, length, limit, list, pressure, ratio, solve } from '../words.ts'
import { centreStrain } from './centre-strain.ts'
import { lengthUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'
import { settlementElasticCases } from './settlement-elastic-cases.ts'
import { settlementElasticSteps } from './settlement-elastic-steps.ts'
import { baseShape, pressesMore, pressingBase, settlementUnit } from './settlement-inputs.ts'

/** Immediate settlement of a rectangular base on elastic layers by Steinbrenner, net of the ground dug out. */
export const settlementElastic = defineModule({
  id: 'settlement-elastic',
  version: '1.0.1',
  title: 'Immediate settlement, elastic',
  asks: 'How much does the raft settle at once, on elastic layers?',
  inputs: {
    ...pressingBase,
    layers: list('ground below the base, from the base down', {
      note: 'To rock or much stiffer ground, or to twice the width of the base',
      least: 1,
      most: 8,
      fields: {
        layer: label({ says: 'what the layer is', optional: true }),
        thickness: length({ says: 'thickness', symbol: 'h', unit: lengthUnit, above: '0 m' }),
        E: pressure({
          says: 'modulus of the ground, a low value',
          note: 'Drained for sand; undrained for clay in the short term',
          symbol: 'E',
          unit: { SI: 'MPa', US: 'ksf' },
          above: '0 MPa',
          usual: ['2 MPa', '300 MPa'],
        }),
        nu: ratio({
          says: "Poisson's ratio",
          note: '0.5 for clay in the short term, about 0.3 for sand',
          symbol: 'nu',
          least: '0',
          most: '0.5',
        }),
      },
    }),
    beneath: choice({
      says: 'what lies below the last layer',
      words: {
        rock: 'rock, or ground so stiff that it does not shorten',
        soil: 'more soil like that of the last layer',
      },
    }),
  },
  steps: settlementElasticSteps,
  results: ['s_centre', 's_stiff', 'p_net'],
  covers: ['settlement'],
  limits: [
    saturatedNoLighter(),
    baseShape,
    pressesMore('What settles then is only what heaved when the pit was dug: it is not reckoned here'),
    limit('sum(layers.thickness) >= 2 * width', {
      when: { choice: 'beneath', is: ['soil'] },
      says: 'the layers reach to twice the width of the base',
      advice: 'Carry the layers further down: what lies below them still shortens',
      otherwise: 'warn',
      on: 'layers',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'A modulus from a correlation is good to a factor of two, and so is the settlement.',
    'Immediate settlement only: in clay consolidation follows, and often governs.',
    'The depth of the base and the heave of the pit are not counted; nor is tilt, or weaker ground under one side.',
    'Each layer is reckoned with the stresses of uniform ground: a stiff layer over a soft one spreads more in truth.',
    'Pumping for the pit settles the ground round about: that is a reckoning of its own.',
  ],
  second: {
    title: 'Strain under the centre added up',
    says: 'The same elastic layers, but the strain at each depth is added up from the stresses there: no factors of Steinbrenner.',
    steps: [
      solve(centreStrain, {
        takes: {
          width: 'width',
          length: 'length',
          pressure: 'p_net',
          thickness: { list: 'layers.thickness' },
          E: { list: 'layers.E' },
          nu: { list: 'layers.nu' },
        },
        gives: {
          settlement: {
            dimension: 'length',
            name: 's_strain',
            says: 'settlement of the centre, by strain',
            symbol: 's_eps',
            unit: settlementUnit,
          },
        },
        says: 'strain added up over the depth of each layer',
      }),
    ],
    compare: [{ first: 's_centre', second: 's_strain', band: 1e-6, says: 'one elastic field, in two forms' }],
  },
  published: settlementElasticCases,
  example: {
    width: '5.8 m',
    length: '9.2 m',
    depth: '1.2 m',
    pressure: '95 kPa',
    s_allow: '25 mm',
    gamma: '18 kN/m^3',
    gamma_sat: '20 kN/m^3',
    water_depth: '3.5 m',
    layers: [
      { layer: 'medium sand', thickness: '4 m', E: '25 MPa', nu: '0.3' },
      { layer: 'dense gravel', thickness: '8 m', E: '60 MPa', nu: '0.3' },
    ],
    beneath: 'soil',
  },
})
