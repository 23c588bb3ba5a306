import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { choice, look, quantity, step, when } from '../words.ts'
import {
  barChoiceCautions,
  barChoiceInputs,
  barChoiceLimits,
  barChoiceResults,
  barChoiceSteps,
  checkMost,
  depthOf,
  mostSpacing,
} from './bar-choice-parts.ts'
import { drawBarChoice } from './bar-choice-sketch.ts'
import { size, steelPerWidth, strength } from './bar-steps.ts'

const isWall = { choice: 'member', is: ['wall, vertical', 'wall, horizontal'] }
const wallSteel = (title: string, cells: string) =>
  table(
    {
      title,
      source: cite('aci-318', 'Table 11.6.1'),
      status: 'from memory of the standard',
      unit: '',
      row: { kind: 'words', says: 'bars of the wall', keys: isWall.is },
    },
    cells,
  )
const light = wallSteel('Least steel of walls, Grade 60 to No. 5, part of the gross section', '0.0012 \n 0.0020')
const heavy = wallSteel('Least steel of walls, other bars, part of the gross section', '0.0015 \n 0.0025')
const wallRatio = { row: 'member', says: 'least steel of the wall, both faces, over the gross section' }

const least: readonly Step[] = [
  when(isWall, {
    yes: [
      when(
        { formula: 'f_y >= 60000 psi and phi <= 0.625 in' },
        {
          says: 'the bars are of Grade 60 or more and no larger than No. 5',
          yes: [look('rho_min', light, wallRatio)],
          no: [look('rho_min', heavy, wallRatio)],
        },
      ),
      step('A_min', 'rho_min * thickness / 2', {
        says: 'least steel at each face',
        unit: steelPerWidth,
        source: cite('aci-318', '11.6.1'),
      }),
    ],
    no: [
      step('A_min', '0.0018 * thickness', {
        says: 'least steel',
        unit: steelPerWidth,
        source: cite('aci-318', '7.6.1.1, 24.4.3.2'),
      }),
    ],
  }),
]

const crackSpacing: readonly Step[] = [
  step('f_s', '2 / 3 * f_y', {
    says: 'steel stress under service load',
    unit: strength,
    source: cite('aci-318', '24.3.2.1'),
  }),
  step('s_crack', 'min(15 in * (40000 psi / f_s) - 2.5 * cover, 12 in * (40000 psi / f_s))', {
    says: 'largest spacing for crack control',
    unit: size,
    source: cite('aci-318', 'Table 24.3.2'),
  }),
  mostSpacing('min(3 * thickness, 18 in, s_crack)', cite('aci-318', '7.7.2.2, 7.7.2.3')),
]

const most: readonly Step[] = [
  when(
    { choice: 'member', is: ['slab, main'] },
    {
      yes: crackSpacing,
      no: [
        when(
          { choice: 'member', is: ['slab, secondary'] },
          {
            yes: [mostSpacing('min(5 * thickness, 18 in)', cite('aci-318', '7.7.6.2.1'))],
            no: [mostSpacing('min(3 * thickness, 18 in)', cite('aci-318', '11.7.2.1, 11.7.3.1'))],
          },
        ),
      ],
    },
  ),
  checkMost(cite('aci-318', '7.7.2, 7.7.6.2.1, 11.7.2.1, 11.7.3.1')),
]

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
  version: '1.0.0',
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
    least,
    most,
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
