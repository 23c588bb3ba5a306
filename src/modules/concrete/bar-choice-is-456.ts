import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, look, step, when } from '../words.ts'
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
import { steelPerWidth, strength } from './bar-steps.ts'
import { leastSlabSteel, steelWords, yieldStrength } from './is456-steel.ts'
import { isWall, wallRatio, wallSteel } from './wall-bars.ts'

const source = cite('is-456', 'cl. 32.5 a), c)')
const light = wallSteel(
  source,
  'Least steel of walls, deformed bars to 16 mm, part of the gross section',
  '0.0012 \n 0.0020',
)
const heavy = wallSteel(source, 'Least steel of walls, other bars, part of the gross section', '0.0015 \n 0.0025')

const least: readonly Step[] = [
  look('f_y', yieldStrength, { row: 'steel', says: 'characteristic strength of the steel', unit: strength }),
  when(isWall, {
    yes: [
      when(
        { formula: 'f_y >= 415 MPa and phi <= 16 mm' },
        {
          says: 'the bars are deformed and of 16 mm or less',
          yes: [look('rho_min', light, wallRatio)],
          no: [look('rho_min', heavy, wallRatio)],
        },
      ),
      step('A_min', 'rho_min * thickness / 2', {
        says: 'least steel at each face',
        symbol: 'a_min',
        unit: steelPerWidth,
        source: cite('is-456', 'cl. 32.5'),
      }),
    ],
    no: [
      look('rho_min', leastSlabSteel, { row: 'steel', says: 'least steel over the gross section' }),
      step('A_min', 'rho_min * thickness', {
        says: 'least steel',
        symbol: 'a_min',
        unit: steelPerWidth,
        source: cite('is-456', 'cl. 26.5.2.1'),
      }),
    ],
  }),
]

const most: readonly Step[] = [
  when(isWall, {
    yes: [mostSpacing('min(3 * thickness, 450 mm)', cite('is-456', 'cl. 32.5 b), d)'))],
    no: [
      when(
        { choice: 'member', is: ['slab, main'] },
        {
          yes: [mostSpacing('min(3 * d, 300 mm)', cite('is-456', 'cl. 26.3.3 b) 1)'))],
          no: [mostSpacing('min(5 * d, 450 mm)', cite('is-456', 'cl. 26.3.3 b) 2)'))],
        },
      ),
      check('bar_largest', 'phi <= thickness / 8', {
        says: 'bars of a slab against its thickness',
        source: cite('is-456', 'cl. 26.5.2.2'),
      }),
    ],
  }),
  checkMost(cite('is-456', 'cl. 26.3.3 b), 32.5 b), d)')),
]

/** Bar and spacing for a required area by IS 456: least steel, largest spacing, clear distance. */
export const barChoiceIs456 = defineModule({
  id: 'bar-choice-is-456',
  version: '1.0.1',
  title: 'Bar and spacing by IS 456',
  asks: 'Do these bars at this spacing give the steel that is needed, and keep the rules of IS 456?',
  code: 'IS 456:2000',
  inputs: {
    member: choice({
      says: 'what the bars are',
      words: {
        'slab, main': 'bars that carry the bending of a slab, raft or bent wall',
        'slab, secondary': 'bars across them, for shrinkage and distribution',
        'wall, vertical': 'upright bars of a wall with a layer at each face',
        'wall, horizontal': 'level bars of a wall with a layer at each face',
      },
    }),
    ...barChoiceInputs,
    thickness: depthOf('D'),
    steel: choice({ says: 'grade of the bars', words: steelWords }),
  },
  steps: barChoiceSteps({
    least,
    most,
    area: cite('is-456', 'cl. 26.5.2.1, 32.5'),
    clear: { formula: 'max(phi, aggregate + 5 mm)', source: cite('is-456', 'cl. 26.3.2 a)') },
  }),
  results: [...barChoiceResults],
  covers: ['detailing'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing'],
  limits: barChoiceLimits,
  cautions: barChoiceCautions,
  sketch: drawBarChoice,
  published: [
    {
      id: 'bar-4',
      source: 'published design sheet to IS 456, least steel of a slab 125 mm thick, Fe 415',
      status: 'looked up',
      says: '0.12 % of the gross section; bars of 8 mm at 150 mm give 335',
      inputs: {
        member: 'slab, main',
        required_area: '0 mm^2/m',
        bar_size: '8 mm',
        spacing: '150 mm',
        cover: '20 mm',
        aggregate: '20 mm',
        thickness: '125 mm',
        steel: 'Fe 415',
      },
      answers: { A_min: '150 mm^2/m', A_s: '335 mm^2/m' },
    },
  ],
  example: {
    member: 'slab, main',
    required_area: '640 mm^2/m',
    bar_size: '12 mm',
    spacing: '150 mm',
    cover: '40 mm',
    aggregate: '20 mm',
    thickness: '250 mm',
    steel: 'Fe 500',
  },
})
