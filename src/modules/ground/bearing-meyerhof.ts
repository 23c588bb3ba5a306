import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit, quantity } from '../words.ts'
import { bearingFactor } from './bearing-allowable.ts'
import { bearingGround, otherLoads, rectangularBase } from './bearing-inputs.ts'
import { eccentricityLimits, strengthLimits } from './bearing-limits.ts'
import { bearingMeyerhofCases } from './bearing-meyerhof-cases.ts'
import { bearingMeyerhofSecond } from './bearing-meyerhof-second.ts'
import { bearingMeyerhofSteps } from './bearing-meyerhof-steps.ts'
import { drawBearing } from './bearing-sketch.ts'
import { forceUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

/** Bearing capacity of a rectangle by Meyerhof, with shape, depth and inclination, and one factor. */
export const bearingMeyerhof = defineModule({
  id: 'bearing-meyerhof',
  version: '1.1.0',
  title: 'Bearing capacity by Meyerhof',
  asks: 'Does the ground bear the raft, by Meyerhof with one factor of safety?',
  inputs: {
    ...rectangularBase,
    load: quantity('force', {
      says: 'vertical load on the ground, raft and soil on it included',
      note: 'Total and not factored; the uplift of the water is taken off here',
      symbol: 'V',
      unit: forceUnit,
      above: '0 kN',
    }),
    ...otherLoads,
    F: bearingFactor,
    above: choice({
      says: 'strength of the ground above the base',
      words: {
        'left out': 'fill, or ground that may be dug away: it weighs, and no more',
        counted: 'undisturbed ground as strong as that below, on all sides for good: factors of depth',
      },
    }),
    ...bearingGround,
  },
  steps: bearingMeyerhofSteps,
  results: ['q_all', 'q_gross', 'q_net', 'p_net', 'A_e'],
  covers: ['bearing'],
  drawing: ['width', 'length', 'depth'],
  limits: [
    saturatedNoLighter(),
    ...strengthLimits,
    ...eccentricityLimits,
    limit('alpha_V < phi', {
      when: { choice: 'strength', is: ['drained'] },
      says: 'the load leans less than the angle of friction',
      advice: 'The base slides',
      otherwise: 'refuse',
      on: 'H',
      source: cite('meyerhof-1963'),
    }),
    limit('depth <= width', {
      when: { choice: 'above', is: ['counted'] },
      says: 'the base is no deeper than it is wide where its depth is counted',
      otherwise: 'warn',
      on: 'depth',
      source: cite('meyerhof-1963', 'shallow foundations'),
    }),
  ],
  cautions: [
    'Strength failure only. Settlement usually governs a raft, and differential settlement its bending.',
    'Level base, level ground, one soil down to about one and a half widths below the base.',
    'Clay is checked twice: undrained for the short term, drained for the long.',
    { says: 'Sliding on the base is a check of its own.', when: { given: 'H' } },
    {
      says: 'Ground dug out and filled again beside the raft has no strength to count.',
      when: { choice: 'above', is: ['counted'] },
    },
  ],
  second: bearingMeyerhofSecond,
  sketch: view =>
    drawBearing(view, {
      width: view.number('width'),
      side: 'width',
      pressed: view.number('B_e'),
      load: 'load',
      resistance: 'q_gross',
    }),
  published: bearingMeyerhofCases,
  example: {
    width: '5.8 m',
    length: '9.2 m',
    depth: '4.3 m',
    load: '5600 kN',
    above: 'left out',
    strength: 'undrained',
    c_u: '60 kPa',
    gamma: '18 kN/m^3',
    gamma_sat: '20 kN/m^3',
    water_depth: '1.0 m',
  },
})
