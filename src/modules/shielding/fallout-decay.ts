import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, limit, quantity, ratio } from '../words.ts'
import { falloutDecayCases } from './fallout-decay-cases.ts'
import { rateAddedUp } from './fallout-decay-second.ts'
import { drawFalloutDecay } from './fallout-decay-sketch.ts'
import {
  doseOfStay,
  doseUnit,
  leaving,
  limitReached,
  rates,
  rateUnit,
  timeUnit,
  wantedRate,
} from './fallout-decay-steps.ts'

const when = { above: '0 hr', most: '100000 hr', unit: timeUnit }

/** Rate and dose of fallout between two times by the power law, and when people may leave. */
export const falloutDecay = defineModule({
  id: 'fallout-decay',
  version: '1.1.0',
  title: 'Decay of fallout and dose over a stay',
  asks: 'What dose does a stay bring while fallout decays, and when may people leave?',
  inputs: {
    rate: quantity('dose_rate', {
      says: 'dose rate outside, measured or assumed',
      note: 'In sievert or rem. A meter in roentgen: for gamma 1 roentgen may be taken as 1 rem (10 mSv), on the safe side',
      symbol: 'R_m',
      unit: rateUnit,
      above: '0 mSv/hr',
    }),
    measured_at: quantity('time', {
      ...when,
      says: 'time of that rate, after the detonation',
      note: 'Not after the arrival: the law counts from the detonation, from half an hour on',
      symbol: 't_m',
      least: '0.5 hr',
    }),
    deposit_at: quantity('time', {
      ...when,
      says: 'time at which the deposit was complete, after the detonation',
      symbol: 't_d',
      optional: true,
    }),
    enter_at: quantity('time', {
      ...when,
      says: 'beginning of the stay, after the detonation',
      note: 'Those already inside begin when the deposit is complete',
      symbol: 't_a',
      least: '0.5 hr',
    }),
    leave_at: quantity('time', { ...when, says: 'end of the stay, after the detonation', symbol: 't_b' }),
    protection_factor: ratio({
      says: 'protection factor of the place of the stay',
      note: '1 in the open',
      symbol: 'P',
      least: '1',
      usual: ['1', '1e5'],
    }),
    dose_limit: quantity('dose', {
      says: 'dose that the stay and all after it may bring',
      symbol: 'D_tot',
      unit: doseUnit,
      above: '0 mSv',
    }),
    rate_wanted: quantity('dose_rate', {
      says: 'rate outside that is waited for',
      symbol: 'R_w',
      unit: rateUnit,
      above: '0 mSv/hr',
      optional: true,
    }),
    exponent: ratio({
      says: 'exponent of the decay',
      note: 'Fit it to own readings where there are some hours of them',
      symbol: 'n_d',
      above: '1',
      most: '2',
      usual: ['1.1', '1.4'],
      default: '1.2',
      source: cite('fallout-law', '1.2'),
    }),
  },
  steps: [
    ...rates,
    ...doseOfStay,
    check('dose', 'D_in <= dose_limit', { says: 'the dose of the stay is within its limit' }),
    limitReached,
    leaving,
    wantedRate,
  ],
  results: ['D_in', 'D_out', 'D_end', 'R_1', 'R_a', 'R_b', 't_leave'],
  covers: ['time-inside'],
  limits: [
    limit('leave_at > enter_at', {
      says: 'the stay ends after it begins',
      otherwise: 'refuse',
      on: 'leave_at',
      source: cite('fallout-law'),
    }),
    limit('measured_at >= deposit_at', {
      says: 'the rate was measured when the deposit was complete',
      when: { given: 'deposit_at' },
      advice: 'While fallout still comes down the rate rises and no law of decay holds',
      otherwise: 'refuse',
      on: 'measured_at',
      source: cite('fallout-law'),
    }),
    limit('enter_at >= deposit_at', {
      says: 'the stay begins when the deposit is complete',
      when: { given: 'deposit_at' },
      advice: 'Those inside before begin at that time',
      otherwise: 'refuse',
      on: 'enter_at',
      source: cite('fallout-law'),
    }),
    limit('leave_at <= 336 hr', {
      says: 'the stay ends within two weeks',
      advice: 'There the law holds within a quarter; later only within a factor of two',
      otherwise: 'warn',
      on: 'leave_at',
      source: cite('fallout-law'),
    }),
    limit('leave_at <= 4400 hr', {
      says: 'the stay ends within half a year',
      advice: 'Later the true rate falls much faster than the law: go by the meter',
      otherwise: 'warn',
      on: 'leave_at',
      source: cite('fallout-law'),
    }),
    limit('t_wanted <= 4400 hr', {
      says: 'the rate waited for comes within half a year',
      when: { given: 'rate_wanted' },
      advice: 'Later the true rate falls much faster than the law: go by the meter',
      otherwise: 'warn',
      on: 'rate_wanted',
      source: cite('fallout-law'),
    }),
  ],
  cautions: [
    'A measured rate outranks the law: measure often, and begin again from the last reading.',
    'Several bursts, induced activity, weathering and releases from reactors do not follow this law.',
    'When to leave is a decision for the authorities and the meter, not for a formula. A time of leaving counts all later life in the open at that place: moving off, or a swept place, is better. Where none is given it is later than half a year, and this law cannot say when.',
    'The range of the law, half an hour to half a year, and its accuracy are from memory: check them against the book.',
    'Only external gamma is counted, neither beta on the skin nor what is breathed in or swallowed.',
  ],
  second: rateAddedUp,
  sketch: drawFalloutDecay,
  published: falloutDecayCases,
  example: {
    rate: '100 mSv/hr',
    measured_at: '2 hr',
    enter_at: '2 hr',
    leave_at: '336 hr',
    protection_factor: '400',
    dose_limit: '250 mSv',
    rate_wanted: '1 mSv/hr',
  },
})
