import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { pitInflowCases } from './pit-inflow-cases.ts'
import { pitInflowInputs } from './pit-inflow-inputs.ts'
import { pitInflowSecond } from './pit-inflow-second.ts'
import { pitInflowSketch } from './pit-inflow-sketch.ts'
import { pitInflowSteps } from './pit-inflow-steps.ts'

/** Steady flow to a pumped pit as to one large well, and the duty of its pumps. */
export const pitInflow = defineModule({
  id: 'pit-inflow',
  version: '1.0.1',
  title: 'Water pumped from the pit',
  asks: 'How much water must be pumped to keep the pit dry, and what must the pumps do?',
  inputs: pitInflowInputs,
  steps: pitInflowSteps,
  results: ['Q_pump', 'head', 'P_pump', 'drawdown', 'Q', 'Q_high', 'r_e', 'R_0_high'],
  covers: ['pit-water'],
  limits: [
    limit('depth + margin > water_depth', {
      says: 'the water stands above the depth to which it is to be lowered',
      advice: 'The pit is dry without pumping: leave the block out',
      otherwise: 'refuse',
      on: 'water_depth',
      source: cite('statics'),
    }),
    limit('k_high >= k', {
      says: 'the highest permeability is no less than the best estimate',
      otherwise: 'refuse',
      on: 'k_high',
    }),
    limit('R_0 > r_e', {
      says: 'the water that is not lowered lies outside the ring',
      otherwise: 'refuse',
      on: 'reach',
      source: cite('dupuit-thiem'),
    }),
    limit('H > drawdown', {
      says: 'the water is not lowered to the base of the aquifer',
      advice: 'Wells cannot dry the whole aquifer: cut it off, or drain on its base and reckon otherwise',
      otherwise: 'refuse',
      on: 'aquifer_base',
      source: cite('dupuit-thiem', 'full penetration'),
    }),
    limit('D > 0 m', {
      says: 'a confined aquifer has a top above its base',
      advice: 'Give `aquifer_top`',
      otherwise: 'refuse',
      on: 'aquifer_top',
    }),
    limit('aquifer_top >= water_depth + drawdown', {
      when: { choice: 'aquifer', is: ['confined'] },
      says: 'lowered, the head still stands over the top of the aquifer',
      advice: 'The flow turns into one with a water table near the pit: this formula no longer holds',
      otherwise: 'refuse',
      on: 'aquifer_top',
      source: cite('dupuit-thiem', 'confined'),
    }),
    choiceLimit('aquifer', ['confined'], {
      when: { given: 'aquifer_top' },
      says: 'a top of the aquifer goes with a confined one',
      advice: 'Leave `aquifer_top` out, or choose `confined`',
      otherwise: 'refuse',
      on: 'aquifer_top',
    }),
    limit('max(ring_length / ring_width, ring_width / ring_length) <= 5', {
      says: 'the ring is at most five times as long as it is wide',
      advice: 'A trench draws water as a line does',
      otherwise: 'warn',
      on: 'ring_length',
      source: cite('practice', 'equivalent well'),
    }),
  ],
  cautions: [
    'Permeability is known to a factor of three to ten at best: the highest credible value comes from a pumping test, not from a grading curve.',
    'Rain, surface water and leaking pipes that run into the pit are not in it.',
    'The pumps never stop: a standby pump and a second source of power start by themselves.',
    'Lowered water settles the ground round about and may dry wells: survey the neighbours first, and recharge where they cannot bear it.',
    'The wells or drains reach to the base of the aquifer. Water that enters through the bottom of a shallower ring is not in it.',
    'The formula of Sichardt is empirical and knows neither time nor recharge: the flow changes with its logarithm only.',
    {
      says: 'Lowering the head does not by itself keep a tight pit bottom down: check its uplift.',
      when: { choice: 'aquifer', is: ['confined'] },
    },
  ],
  second: pitInflowSecond,
  sketch: pitInflowSketch,
  published: pitInflowCases,
  example: {
    aquifer: 'unconfined',
    k: '2e-5 m/s',
    k_high: '1e-4 m/s',
    ring_length: '10.6 m',
    ring_width: '7.2 m',
    equivalent: 'equal area',
    depth: '4.7 m',
    water_depth: '2.8 m',
    aquifer_base: '9 m',
    outlet_head: '3 m',
    efficiency: '0.5',
  },
})
