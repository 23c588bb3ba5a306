import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { retainingCases } from './retaining-cases.ts'
import { frontLimits } from './retaining-front.ts'
import { retainingInputs } from './retaining-inputs.ts'
import { retainingSecond } from './retaining-second.ts'
import { retainingSketch } from './retaining-sketch.ts'
import { retainingSteps } from './retaining-steps.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

/** Overturning, sliding, bearing and middle third of a free-standing cantilever wall. */
export const retainingStability = defineModule({
  id: 'retaining-stability',
  version: '2.0.0',
  title: 'Stability of a free-standing wall',
  asks: 'Does the free-standing wall of the entrance stand: against overturning, sliding and bearing failure?',
  inputs: retainingInputs,
  steps: retainingSteps,
  results: ['F_o', 'F_s', 'F_b', 'q_max', 'e', 'P_h', 'V_b'],
  covers: ['free-walls'],
  drawing: ['stem', 'stem_top', 'stem_foot', 'base', 'toe', 'heel'],
  limits: [
    saturatedNoLighter(),
    limit('alpha < phi', {
      says: 'the fill slopes less than its angle of friction',
      advice: 'Such a slope does not stand by itself',
      otherwise: 'refuse',
      on: 'alpha',
    }),
    limit('stem_foot >= stem_top', {
      says: 'the stem is no thinner at its foot than at its top',
      otherwise: 'refuse',
      on: 'stem_foot',
    }),
    limit('water <= base + stem', {
      says: 'the water stands no higher than the stem',
      advice: 'Water over the wall is another case: it floods the entrance',
      otherwise: 'refuse',
      on: 'water',
    }),
    limit('V_b > 0 kN/m', {
      says: 'the wall is heavier than the uplift under it',
      otherwise: 'refuse',
      on: 'water',
    }),
    ...frontLimits,
    choiceLimit('overall', ['checked apart', 'level firm ground'], {
      says: 'overall failure, of the ground with the wall in it, is answered',
      advice:
        'Check the slope with the wall in it: no check of this block stands without it (a slip on a circle: `slope-circle`; a long slope: `infinite-slope`)',
      otherwise: 'warn',
      on: 'overall',
      source: cite('en-1997-1', '9.7.2, from memory'),
    }),
    limit('alpha <= 0 deg', {
      when: { choice: 'overall', is: ['level firm ground'] },
      says: 'ground that is called level does not rise behind the wall',
      advice: 'Check the slope with the wall in it, and choose `checked apart`',
      otherwise: 'refuse',
      on: 'overall',
    }),
    limit('e < B / 2', {
      says: 'the resultant stands on the base',
      advice: 'The wall overturns: give it a longer heel',
      otherwise: 'refuse',
      on: 'heel',
    }),
  ],
  cautions: [
    'A length of long wall: a short one that is tied to the box or to a corner stands better, and is pressed harder.',
    'Soil over the toe and the load on the heel are not counted as a help; both may be gone.',
    'These are failures of the wall on its ground. That the ground fails with the wall in it is no part of them: in a slope, over weak ground or beside a cut it comes first.',
    'Compaction close behind the wall, earthquake and impact press harder than the active state.',
    {
      says: 'Dry fill behind a wall is a promise: drain, filter and weep holes belong to the drawings and to upkeep.',
      when: { formula: 'water <= 0 m' },
    },
    {
      says: 'Ground before the toe is counted: it needs movement, and is lost with the first trench. Say on the drawings that it stays, and how deep.',
      when: { choice: 'front', is: ['force given', 'reckoned'] },
    },
  ],
  second: retainingSecond,
  sketch: retainingSketch,
  published: retainingCases,
  example: {
    stem: '2.8 m',
    stem_top: '0.25 m',
    stem_foot: '0.30 m',
    base: '0.35 m',
    toe: '0.6 m',
    heel: '2.1 m',
    gamma_c: '24 kN/m^3',
    gamma: '18 kN/m^3',
    gamma_sat: '20 kN/m^3',
    phi: '32 deg',
    surcharge: '10 kPa',
    water: '0.5 m',
    delta_b: '22 deg',
    q_ult: '450 kPa',
    overall: 'level firm ground',
  },
})
