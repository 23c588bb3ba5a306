import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit, pressure } from '../words.ts'
import { bearingFactor } from './bearing-allowable.ts'
import { baseDepth, bearingGround } from './bearing-inputs.ts'
import { strengthLimits } from './bearing-limits.ts'
import { drawBearing } from './bearing-sketch.ts'
import { bearingTerzaghiCases } from './bearing-terzaghi-cases.ts'
import { bearingTerzaghiSecond } from './bearing-terzaghi-second.ts'
import { bearingTerzaghiSteps } from './bearing-terzaghi-steps.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

/** Bearing capacity of a strip, square or circle under a central load by Terzaghi, with one factor. */
export const bearingTerzaghi = defineModule({
  id: 'bearing-terzaghi',
  version: '1.0.2',
  title: 'Bearing capacity by Terzaghi',
  asks: 'Does the ground bear a central load, by Terzaghi with one factor of safety?',
  inputs: {
    shape: choice({
      says: 'shape of the base',
      note: 'A rectangle lies between strip and square: reckon both and take the lesser',
      words: {
        strip: 'a long base, five times its width or more',
        square: 'a square; the width is its side',
        circle: 'a circle; the width is its diameter',
      },
    }),
    width: length({
      says: 'width of the base',
      symbol: 'B',
      unit: lengthUnit,
      above: '0 m',
      usual: ['0.4 m', '20 m'],
    }),
    depth: baseDepth,
    pressure: pressure({
      says: 'mean pressure under the base, all loads, not factored',
      note: 'Gross and total: raft, soil on it and water in it included',
      symbol: 'p',
      unit: pressureUnit,
      above: '0 kPa',
    }),
    F: bearingFactor,
    shear: choice({
      says: 'how the ground fails',
      words: {
        general: 'dense sand and stiff clay: the whole strength',
        local: 'loose sand and soft clay: two thirds of friction and cohesion (Terzaghi)',
      },
      default: 'general',
    }),
    ...bearingGround,
  },
  steps: bearingTerzaghiSteps,
  results: ['q_all', 'q_gross', 'q_net', 'p_net'],
  covers: ['bearing'],
  drawing: ['width', 'depth'],
  limits: [
    saturatedNoLighter(),
    ...strengthLimits,
    limit('depth <= width', {
      says: 'the base is no deeper than it is wide',
      advice: 'Deeper, the method leaves out strength: it is on the safe side',
      otherwise: 'warn',
      on: 'depth',
      source: cite('terzaghi-1943', 'shallow foundations'),
    }),
  ],
  cautions: [
    'A central, vertical load only: no moment, no horizontal load.',
    'Strength failure only. Settlement usually governs a raft, and differential settlement its bending.',
    'Level base, level ground, one soil down to about one and a half widths below the base.',
    'Clay is checked twice: undrained for the short term, drained for the long.',
    {
      says: 'Two thirds of the strength is a rough rule for loose ground: such ground is better compacted or taken out.',
      when: { choice: 'shear', is: ['local'] },
    },
  ],
  second: bearingTerzaghiSecond,
  sketch: view =>
    drawBearing(view, {
      width: view.number('width'),
      side: 'width',
      pressed: view.number('width'),
      load: 'pressure',
      resistance: 'q_gross',
    }),
  published: bearingTerzaghiCases,
  example: {
    shape: 'strip',
    width: '5.8 m',
    depth: '4.3 m',
    pressure: '105 kPa',
    strength: 'undrained',
    c_u: '60 kPa',
    gamma: '18 kN/m^3',
    gamma_sat: '20 kN/m^3',
    water_depth: '1.0 m',
  },
})
