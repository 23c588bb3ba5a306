import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, length, limit, look, quantity, ratio, step, when } from '../words.ts'
import { size, strength } from './bar-steps.ts'
import { durabilityIs456Cases } from './durability-is-456-cases.ts'
import { cubeStrength } from './is456-concrete.ts'
import {
  aggregateWords,
  cementForAggregate,
  exposureWords,
  leastCement,
  leastGrade,
  mostWater,
  nominalCover,
} from './is456-durability.ts'

const is = (at: string) => cite('is-456', at)
const content = { SI: 'kg/m^3', US: 'lb/ft^3' }

const leastOfMix = { says: 'least cement of the mix', symbol: 'C_min', unit: content }

const cover = (formula: string, source: string): Step =>
  step('c_need', formula, { says: 'nominal cover needed', unit: size, source: is(source) })

const steps: readonly Step[] = [
  look('c_tab', nominalCover, { row: 'exposure', says: 'nominal cover for the exposure', unit: size }),
  when(
    { choice: 'member', is: ['footing'] },
    {
      yes: [cover('max(c_tab, largest_bar, 50 mm)', 'cl. 26.4.1, 26.4.2.2')],
      no: [cover('max(c_tab, largest_bar)', 'cl. 26.4.1, 26.4.2')],
    },
  ),
  check('covered', 'cover >= c_need', { says: 'nominal cover against the cover needed', source: is('cl. 26.4.2') }),
  look('f_least', leastGrade, {
    row: 'exposure',
    says: 'least grade, strength of cubes',
    symbol: 'f_ck_min',
    unit: strength,
  }),
  check('strong', 'f_ck >= f_least', { says: 'grade against the least grade', source: is('cl. 6.1.2, Table 5') }),
  when(
    { choice: 'aggregate', is: ['20 mm'] },
    {
      yes: [look('C_least', leastCement, { row: 'exposure', ...leastOfMix })],
      no: [
        look('C_tab', leastCement, { row: 'exposure', says: 'least cement with aggregate of 20 mm', unit: content }),
        look('C_add', cementForAggregate, {
          row: 'aggregate',
          says: 'more or less for this aggregate',
          symbol: 'Delta_C',
          unit: content,
        }),
        step('C_least', 'C_tab + C_add', { ...leastOfMix, source: is('cl. 8.2.4.1') }),
      ],
    },
  ),
  check('enough_cement', 'cement >= C_least', {
    says: 'cement of the mix against the least',
    source: is('cl. 8.2.4.1'),
  }),
  look('r_most', mostWater, { row: 'exposure', says: 'greatest free water-cement ratio', symbol: 'r_wc_max' }),
  check('little_water', 'water_cement <= r_most', { says: 'water of the mix against the most', source: is('Table 5') }),
]

/** Cover, grade and mix that the exposure asks for by IS 456, against what is planned. */
export const durabilityIs456 = defineModule({
  id: 'durability-is-456',
  version: '1.0.0',
  title: 'Cover and concrete for durability, IS 456',
  asks: 'Do cover, grade and mix last in this exposure?',
  code: 'IS 456:2000',
  inputs: {
    exposure: choice({ says: 'exposure of the face', note: 'Table 3', words: exposureWords }),
    member: choice({
      says: 'what the face belongs to',
      words: { 'slab or wall': 'roof, wall, or raft on blinding', footing: 'a footing: 50 mm at least' },
    }),
    cover: length({
      says: 'nominal cover to the outermost steel of the face',
      symbol: 'c',
      unit: size,
      least: '0 mm',
      usual: ['20 mm', '100 mm'],
    }),
    largest_bar: length({
      says: 'diameter of the largest bar near the face',
      symbol: 'phi',
      unit: size,
      above: '0 mm',
      most: '40 mm',
    }),
    aggregate: choice({ says: 'nominal size of the aggregate', words: aggregateWords }),
    f_ck: cubeStrength('80 MPa'),
    cement: quantity('density', {
      says: 'cement of the mix',
      note: 'With fly ash and slag, as far as IS 1489 and IS 455 let them count',
      symbol: 'C',
      unit: content,
      above: '0 kg/m^3',
      most: '700 kg/m^3',
      usual: ['280 kg/m^3', '450 kg/m^3'],
    }),
    water_cement: ratio({
      says: 'free water over cement of the mix, by mass',
      symbol: 'r_wc',
      least: '0.2',
      most: '1',
      usual: ['0.35', '0.6'],
    }),
  },
  steps,
  results: ['c_need', 'f_least', 'C_least', 'r_most'],
  covers: ['durability'],
  drawing: ['exposure', 'cement', 'water_cement'],
  limits: [
    limit('cement <= 450 kg/m^3', {
      says: 'there is no more cement than 450 kg in a cubic metre',
      advice: 'More of it shrinks and heats: fly ash and slag do not count here',
      otherwise: 'warn',
      on: 'cement',
      source: is('cl. 8.2.4.2'),
    }),
  ],
  cautions: [
    'Each face has an exposure of its own: one that is wetted and dries by turns is at least severe.',
    'Sulphates in soil or water have Table 4 besides: type of cement, and more of it. Chloride in the mix has Table 7.',
    'The cover is to all steel, links and fixing too, and may be 10 mm more but not less. Reductions in the notes of Table 16 are not taken.',
    'Concrete cast against the ground itself, without blinding, needs more: 75 mm by common practice. Fire has a table of covers of its own.',
    'Life hangs as much on compaction, curing and closed joints as on these numbers.',
  ],
  published: durabilityIs456Cases,
  example: {
    exposure: 'moderate',
    member: 'slab or wall',
    cover: '40 mm',
    largest_bar: '16 mm',
    aggregate: '20 mm',
    f_ck: '30 MPa',
    cement: '340 kg/m^3',
    water_cement: '0.45',
  },
})
