import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, quantity } from '../words.ts'
import { leastAci318, mostAci318 } from './bar-choice-aci-318-steps.ts'
import {
  barChoiceCautions,
  barChoiceInputs,
  barChoiceLimits,
  barChoiceResults,
  barChoiceSteps,
  depthOf,
} from './bar-choice-parts.ts'
import { drawBarChoice } from './bar-choice-sketch.ts'
import { strength } from './bar-steps.ts'

const row = { member: 'slab, main', cover: '0.75 in', aggregate: '0.75 in', thickness: '8 in', f_y: '60000 psi' }
const perFoot = (id: string, bar: string, spacing: string, printed: string) =>
  ({
    id,
    source: 'Nilson, Darwin and Dolan, Design of Concrete Structures, table of bar areas per foot of slab',
    status: 'memory',
    says: `${bar} at ${spacing}`,
    inputs: { ...row, required_area: '0 in^2/ft', bar_size: bar, spacing },
    answers: { A_s: printed },
  }) as const

/** Bar and spacing for a required area by ACI 318-19: least steel, largest spacing, clear distance. */
export const barChoiceAci318 = defineModule({
  id: 'bar-choice-aci-318',
  version: '1.0.1',
  title: 'Bar and spacing by ACI 318',
  asks: 'Do these bars at this spacing give the steel that is needed, and keep the rules of ACI 318?',
  code: 'ACI 318-19',
  inputs: {
    member: choice({
      says: 'what the bars are',
      words: {
        'slab, main': 'bars that carry the bending of a slab, raft or bent wall',
        'slab, secondary': 'bars across them, for shrinkage and temperature',
        'wall, vertical': 'upright bars of a cast wall with a layer at each face',
        'wall, horizontal': 'level bars of a cast wall with a layer at each face',
      },
    }),
    ...barChoiceInputs,
    thickness: depthOf('h'),
    f_y: quantity('stress', {
      says: 'yield strength of the bars',
      unit: strength,
      least: '40000 psi',
      most: '100000 psi',
      source: cite('aci-318', '20.2.2.4'),
    }),
  },
  steps: barChoiceSteps({
    least: leastAci318,
    most: mostAci318,
    area: cite('aci-318', '7.6.1.1, 24.4.3.2, 11.6.1'),
    clear: { formula: 'max(1 in, phi, 4 / 3 * aggregate)', source: cite('aci-318', '25.2.1') },
  }),
  results: [...barChoiceResults],
  covers: ['detailing'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing'],
  limits: barChoiceLimits,
  cautions: [
    ...barChoiceCautions,
    'The least steel of walls is that for small shear in the plane of the wall; a wall that stiffens the box against shear needs the rules of 11.6.2.',
  ],
  sketch: drawBarChoice,
  published: [
    {
      id: 'bar-3',
      source: 'ACI 318-19, 7.6.1.1: 0.0018 of the gross section, slab of 8 in',
      status: 'computed',
      says: '0.0018 times 96 square inches on a foot',
      inputs: { ...row, required_area: '0 in^2/ft', bar_size: 'No. 4', spacing: '12 in' },
      answers: { A_min: '0.173 in^2/ft' },
    },
    perFoot('bar-5a', 'No. 4', '12 in', '0.20 in^2/ft'),
    perFoot('bar-5b', 'No. 4', '6 in', '0.40 in^2/ft'),
    perFoot('bar-5c', 'No. 6', '6 in', '0.88 in^2/ft'),
    {
      id: 'crack-4',
      source: 'ACI 318-19, commentary R24.3.2: cover 2 in, Grade 60, stress 40 ksi, 10 in',
      status: 'memory',
      says: 'largest spacing for crack control, the figure of the commentary itself',
      inputs: {
        ...row,
        cover: '2 in',
        required_area: '0 in^2/ft',
        bar_size: 'No. 5',
        spacing: '10 in',
        thickness: '12 in',
      },
      answers: { s_crack: '10 in' },
    },
  ],
  example: {
    member: 'slab, main',
    required_area: '0.30 in^2/ft',
    bar_size: 'No. 5',
    spacing: '10 in',
    cover: '2 in',
    aggregate: '0.75 in',
    thickness: '10 in',
    f_y: '60000 psi',
  },
})
