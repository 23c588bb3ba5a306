import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { saturatedNoLighter } from './saturated-weight.ts'
import { slopeCircleCases } from './slope-circle-cases.ts'
import { slopeCircleInputs } from './slope-circle-inputs.ts'
import { slopeCircleSecond } from './slope-circle-second.ts'
import { slopeCircleSketch } from './slope-circle-sketch.ts'
import { slopeCircleSteps } from './slope-circle-steps.ts'

/** Slip of a simple slope of one ground on the worst circle, by Bishop's simplified method of slices. */
export const slopeCircle = defineModule({
  id: 'slope-circle',
  version: '1.1.0',
  title: 'Slope that slips on a circle',
  asks: 'Does a pit side or sloping ground stand against a slip on a circle?',
  inputs: slopeCircleInputs,
  steps: slopeCircleSteps,
  results: ['F_c', 'x_0', 'y_0', 'R', 'x_out', 'x_in', 'T_sum', 'S_sum'],
  covers: [
    { line: 'pit-sides', choice: 'place', is: ['pit'] },
    { line: 'slope-global', choice: 'place', is: ['ground'] },
  ],
  drawing: ['slope_height', 'slope'],
  limits: [
    saturatedNoLighter({ when: { choice: 'water', is: ['level'] } }),
    choiceLimit('strength', ['drained'], {
      when: { choice: 'water', is: ['ratio'] },
      says: 'pore pressure goes with effective stress',
      advice: 'Undrained strength has it in itself: choose `level` or `none`, for the weight alone',
      otherwise: 'refuse',
      on: 'water',
      source: cite('statics', 'effective stress'),
    }),
    limit('z_cr <= slope_height / 2', {
      when: { choice: 'crack', is: ['dry', 'full'] },
      says: 'the crack is no deeper than half the slope is high',
      advice: 'What stands before a deeper one topples: prop it, or lay the slope back',
      otherwise: 'refuse',
      on: 'crack_depth',
      source: cite('terzaghi-1943', 'tension cracks'),
    }),
  ],
  cautions: [
    'One ground from the crest to the hard ground, a level crest, nothing at the foot: layers are not in it. Layered ground is run with the strength of its weakest layer throughout, or by slices that know the layers. A soft seam, layers that dip, fissures or an old slip slide on a plane of their own, which no circle shows: check that plane too.',
    'Water that stands before the foot is not in it, neither on the ground nor against the face: it steadies a slope only as long as it stays. Where any stands or may, the water in the ground is given no lower than it: that is the slope just pumped dry.',
    {
      says: 'The steepest slope that the works rules allow holds beside it, and the flatter of the two is dug. People are in the pit: a competent person looks at its sides each morning and after rain, frost or a shock, and may order everybody out.',
      when: { choice: 'place', is: ['pit'] },
    },
    'Rain, frost, a burst pipe or a pond at the crest bring water and take strength. Cover the face, lead the water away, and run the block with the water as it may then stand.',
    'Traffic, piling, compaction and blasting shake loose wet sand and sensitive clay, whose strength is then another. Earthquake is not in it.',
    {
      says: 'Undrained strength is lost as dug clay swells, in stiff fissured clay within days. A side that stays open is checked drained too.',
      when: { choice: 'strength', is: ['undrained'] },
    },
    {
      says: 'Drained strength may be too much or too little for clay just dug: check undrained too. Cohesion of a few kPa governs small slopes; sand that hangs together by being moist loses it when it dries or drowns.',
      when: { choice: 'strength', is: ['drained'] },
    },
    {
      says: 'Cohesive ground cracks behind the crest before it slips, and rain fills the crack: without one the factor is a high one.',
      when: { choice: 'crack', is: ['none'] },
    },
    {
      says: 'Water as high as its level up to the face is on the safe side of a water table that is drawn down to the foot. Water under pressure from below is not in it.',
      when: { choice: 'water', is: ['level'] },
    },
  ],
  second: slopeCircleSecond,
  sketch: slopeCircleSketch,
  published: slopeCircleCases,
  example: {
    place: 'pit',
    slope_height: '4.5 m',
    slope: '36 deg',
    hard_depth: '3 m',
    strength: 'drained',
    phi: '30 deg',
    c: '6 kPa',
    gamma: '18.5 kN/m^3',
    water: 'level',
    water_depth: '4 m',
    gamma_sat: '20 kN/m^3',
    crest: 'loaded',
    surcharge: '10 kPa',
    set_back: '1.5 m',
    crack: 'none',
    factor: '1.3',
  },
})
