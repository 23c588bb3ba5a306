import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, check, choice, each, label, length, limit, list, look, ratio, step } from '../words.ts'
import { attenuationWithBuildUp } from './halving-build-up.ts'
import { halvingCases } from './halving-cases.ts'
import { drawHalvingLayers } from './halving-sketch.ts'
import { halvingThickness, photonEnergies, shieldMaterials, sourceSpectra } from './halving-tables.ts'

const thin = { SI: 'mm', US: 'in' }

/** Attenuation of a stack of layers by published halving thicknesses. */
export const halvingLayers = defineModule({
  id: 'halving-layers',
  version: '1.2.0',
  title: 'Attenuation by halving thicknesses',
  asks: 'By what factor do these layers cut gamma radiation, and how much more would be enough?',
  inputs: {
    layers: list('layers between the source and the people, from the source inwards', {
      least: 1,
      most: 20,
      fields: {
        layer: label({ says: 'what the layer is', optional: true }),
        material: choice({ says: 'material', words: shieldMaterials }),
        thickness: length({
          says: 'least thickness after settlement and erosion',
          symbol: 't',
          unit: thin,
          least: '0 mm',
          most: '20 m',
        }),
      },
    }),
    spectrum: choice({
      says: 'source spectrum, and with it the published set',
      note: 'The sets must not be mixed in one stack',
      words: sourceSpectra,
      default: 'fallout',
    }),
    required_factor: ratio({
      says: 'required protection factor',
      symbol: 'P_req',
      least: '1',
      usual: ['10', '1e5'],
    }),
    add_material: choice({
      says: 'material that would make up what is missing',
      words: shieldMaterials,
      default: 'concrete',
    }),
    energy: choice({
      says: 'photon energy at which the second method is worked',
      words: photonEnergies,
      default: '1 MeV',
    }),
  },
  steps: [
    each('layers', [
      look('x_half', halvingThickness, {
        row: 'material',
        column: 'spectrum',
        says: 'halving thickness',
        unit: thin,
      }),
      step('n', 'thickness / x_half', { says: 'halvings in this layer' }),
      carried('T_before', { first: '1', next: 'T_after', says: 'share that reaches this layer' }),
      step('T_after', 'T_before * 2^(-n)', {
        says: 'share that is left at its inner face',
        source: cite('halving-data'),
      }),
    ]),
    step('n_all', 'sum(layers.n)', { says: 'halvings in all' }),
    step('n_tenth', 'n_all * log10(2)', { says: 'the same in tenth-value thicknesses', symbol: 'n_10' }),
    step('T', '2^(-n_all)', { says: 'share of the radiation that comes through', source: cite('halving-data') }),
    step('P', '1 / T', { says: 'protection factor' }),
    step('n_req', 'log(required_factor) / log(2)', { says: 'halvings required' }),
    step('n_more', 'max(n_req - n_all, 0)', { says: 'halvings still missing by this rule' }),
    look('x_add', halvingThickness, {
      row: 'add_material',
      column: 'spectrum',
      says: 'halving thickness of the material to add',
      unit: thin,
    }),
    step('t_add', 'n_more * x_add', { says: 'thickness of it that would be enough by this rule', unit: thin }),
    check('protection', 'P >= required_factor', { says: 'the protection factor is as required' }),
  ],
  results: ['P', 'T', 'n_all', 'n_tenth', 't_add', 'n_more'],
  covers: ['roof-shielding'],
  limits: [
    limit('n_all <= 10', {
      says: 'the stack is at most ten halvings deep',
      advice: 'Work the stack at 2 MeV as well, by the second method',
      otherwise: 'warn',
      on: 'layers',
      source: cite('halving-data'),
    }),
  ],
  cautions: [
    'These are broad-beam figures for gamma radiation of the spectrum named: not for neutrons, and not for the much harder initial radiation of a near burst.',
    'Use the density of placed soil, not of loose spoil. Wet soil shields better, but it drains: mass per area is what counts.',
    'Gaps, joints, vents and the entrance usually govern, not the stack.',
    {
      says: 'Deeper than ten halvings the hard part of the spectrum governs and the rule may promise too much: work the stack at 2 MeV as well.',
      when: { formula: 'n_all > 10' },
    },
    {
      says: 'The 1962 set of halving thicknesses is from memory and 8 to 33 % thinner than the other: check it against the book before anything rests on it.',
      when: { choice: 'spectrum', is: ['fallout 1962'] },
    },
  ],
  second: attenuationWithBuildUp,
  sketch: drawHalvingLayers,
  published: halvingCases,
  example: {
    layers: [
      { layer: 'cover', material: 'packed earth', thickness: '450 mm' },
      { layer: 'roof slab', material: 'concrete', thickness: '300 mm' },
    ],
    spectrum: 'fallout',
    required_factor: '500',
    add_material: 'packed earth',
  },
})
