import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { choice } from '../words.ts'
import { leastEn1992, mostEn1992 } from './bar-choice-en-1992-steps.ts'
import {
  barChoiceCautions,
  barChoiceInputs,
  barChoiceLimits,
  barChoiceResults,
  barChoiceSteps,
  depthOf,
} from './bar-choice-parts.ts'
import { drawBarChoice } from './bar-choice-sketch.ts'
import { cylinderStrength, ribbedStrength } from './en1992-concrete.ts'

const en = (at: string) => cite('en-1992-1-1', at)

const leastRatio = (id: string, f_ck: string, printed: string): PublishedCase => ({
  id,
  source: 'The Concrete Centre, design aids to Eurocode 2, table 6: least steel of slabs',
  status: 'looked up',
  says: '`0.26 * f_ctm / f_yk`, `f_yk` 500 MPa; the table is rounded down',
  inputs: { ...barChoiceEn1992Example, f_ck, f_yk: '500 MPa' },
  answers: { rho_min: printed },
  tolerance: { units: 1 },
})

const barChoiceEn1992Example = {
  member: 'slab, main',
  required_area: '640 mm^2/m',
  bar_size: '12 mm',
  spacing: '150 mm',
  cover: '40 mm',
  aggregate: '20 mm',
  thickness: '250 mm',
  f_ck: '30 MPa',
  f_yk: '500 MPa',
}

/** Bar and spacing for a required area by EN 1992-1-1: least and most steel, largest spacing, clear distance. */
export const barChoiceEn1992 = defineModule({
  id: 'bar-choice-en-1992',
  version: '1.0.1',
  title: 'Bar and spacing by EN 1992-1-1',
  asks: 'Do these bars at this spacing give the steel that is needed, and keep the rules of EN 1992-1-1?',
  code: 'EN 1992-1-1',
  inputs: {
    member: choice({
      says: 'what the bars are',
      words: {
        'slab, main': 'bars that carry the bending of a slab, raft or bent wall',
        'slab, main, at the largest moment': 'the same, where the moment is largest or a point load stands',
        'slab, secondary': 'bars across them',
        'wall, vertical': 'upright bars of a wall with a layer at each face',
        'wall, horizontal': 'level bars of a wall with a layer at each face',
      },
    }),
    ...barChoiceInputs,
    thickness: depthOf('h'),
    f_ck: cylinderStrength('50 MPa'),
    f_yk: ribbedStrength(),
  },
  steps: barChoiceSteps({
    least: leastEn1992,
    most: mostEn1992,
    area: en('9.3.1.1(1), 9.6.2, 9.6.3'),
    clear: { formula: 'max(phi, aggregate + 5 mm, 20 mm)', source: en('8.2(2)') },
  }),
  results: [...barChoiceResults],
  covers: ['detailing'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing'],
  limits: barChoiceLimits,
  cautions: [
    ...barChoiceCautions,
    'Secondary bars of a slab are also at least a fifth of the main ones, and level bars of a wall a quarter of the upright ones: enter that as the steel needed. The least steel of 9.2.1.1 is here asked of both directions of a slab.',
    'The values are those recommended by the standard: a National Annex may set others.',
  ],
  sketch: drawBarChoice,
  published: [
    leastRatio('bar-1a', '25 MPa', '0.13 percent'),
    leastRatio('bar-1b', '30 MPa', '0.15 percent'),
    leastRatio('bar-1c', '40 MPa', '0.18 percent'),
    leastRatio('bar-1d', '50 MPa', '0.21 percent'),
    {
      id: 'bar-2a',
      source: 'tables of bar areas, 12 mm at 150 mm',
      status: 'looked up',
      says: 'area per metre',
      inputs: { ...barChoiceEn1992Example },
      answers: { A_s: '754 mm^2/m' },
    },
    {
      id: 'bar-2b',
      source: 'tables of bar areas, 10 mm at 200 mm',
      status: 'looked up',
      says: 'area per metre',
      inputs: { ...barChoiceEn1992Example, bar_size: '10 mm', spacing: '200 mm' },
      answers: { A_s: '393 mm^2/m' },
    },
  ],
  example: barChoiceEn1992Example,
})
