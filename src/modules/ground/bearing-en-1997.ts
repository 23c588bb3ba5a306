import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit, quantity } from '../words.ts'
import { bearingEn1997Cases } from './bearing-en-1997-cases.ts'
import { bearingEn1997Second } from './bearing-en-1997-second.ts'
import { bearingEn1997Steps } from './bearing-en-1997-steps.ts'
import { bearingGround, otherLoads, rectangularBase } from './bearing-inputs.ts'
import { eccentricityLimits, strengthLimits } from './bearing-limits.ts'
import { drawBearing } from './bearing-sketch.ts'
import { designApproaches } from './en-1997-factors.ts'
import { forceUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

/** Bearing resistance of a rectangular base by EN 1997-1, Annex D. */
export const bearingEn1997 = defineModule({
  id: 'bearing-en-1997',
  version: '1.1.0',
  title: 'Bearing resistance by EN 1997-1',
  asks: 'Does the ground bear the raft, by Annex D of EN 1997-1?',
  code: 'EN 1997-1:2004',
  inputs: {
    approach: choice({
      says: 'design approach',
      note: 'The national annex chooses; Design Approach 1 wants both of its combinations',
      words: designApproaches,
    }),
    ...rectangularBase,
    load: quantity('force', {
      says: 'design vertical load on the ground, raft and soil on it included',
      note: 'Total, with the load factors of the approach; the uplift of the water is taken off here',
      symbol: 'V',
      unit: forceUnit,
      above: '0 kN',
    }),
    ...otherLoads,
    ...bearingGround,
  },
  steps: bearingEn1997Steps,
  results: ['R_d', 'q_gross', 'q_net', 'q_R', 'V_eff', 'A_e'],
  covers: ['bearing'],
  drawing: ['width', 'length', 'depth'],
  limits: [
    saturatedNoLighter(),
    ...strengthLimits,
    ...eccentricityLimits,
    limit('e_B <= width / 3', {
      says: 'the eccentricity along the width is at most a third of it',
      otherwise: 'warn',
      on: 'M_B',
      source: cite('en-1997-1', '6.5.4'),
    }),
    limit('e_L <= length / 3', {
      says: 'the eccentricity along the length is at most a third of it',
      otherwise: 'warn',
      on: 'M_L',
      source: cite('en-1997-1', '6.5.4'),
    }),
    limit('t_H < 1', {
      says: 'the horizontal load is less than the base can take',
      advice: 'The base slides',
      otherwise: 'refuse',
      on: 'H',
      source: cite('en-1997-1', 'D.3 and D.4'),
    }),
  ],
  cautions: [
    'Strength failure only. Settlement usually governs a raft, and differential settlement its bending.',
    'Level base, level ground, one soil down to about one and a half widths below the base: a weaker layer below is a check of its own.',
    'Annex D has no factors of depth, and none is counted, however deep the base: the ground above it weighs, and its strength counts for nothing.',
    'Annex D is informative, and given here from memory.',
    'Clay is checked twice: undrained for the short term, drained for the long.',
    {
      says: 'Sliding on the base is a check of its own. The factors for the horizontal load are for level ground and a level base.',
      when: { given: 'H' },
    },
  ],
  second: bearingEn1997Second,
  sketch: view =>
    drawBearing(view, {
      width: view.number('width'),
      side: 'width',
      pressed: view.number('B_e'),
      load: 'load',
      resistance: 'R_d',
    }),
  published: bearingEn1997Cases,
  example: {
    approach: 'DA2',
    width: '5.8 m',
    length: '9.2 m',
    depth: '4.3 m',
    load: '6800 kN',
    strength: 'drained',
    phi: '32 deg',
    gamma: '18 kN/m^3',
    gamma_sat: '20 kN/m^3',
    water_depth: '1.0 m',
  },
})
