import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { closedUpCases } from './closed-up-cases.ts'
import { closedUpInputs } from './closed-up-inputs.ts'
import { closedUpSecond } from './closed-up-second.ts'
import { drawClosedUp } from './closed-up-sketch.ts'
import { closedUpSteps } from './closed-up-steps.ts'

/** How long people can stay closed up until carbon dioxide, oxygen or heat is at its limit. */
export const closedUpTime = defineModule({
  id: 'closed-up-time',
  version: '2.0.0',
  title: 'Time closed up',
  asks: 'How long can these people stay closed up until carbon dioxide, oxygen or heat is at its limit?',
  inputs: closedUpInputs,
  steps: closedUpSteps,
  results: ['t_closed', 't_c', 't_o', 't_h', 'c_w', 'o_w', 'theta_w'],
  covers: ['closed-up'],
  drawing: ['t_closed'],
  limits: [
    limit('co2_limit > co2_start', {
      says: 'the room is closed below the limit of carbon dioxide',
      otherwise: 'refuse',
      on: 'co2_start',
      source: cite('mass-balance'),
    }),
    limit('oxygen_limit < o_0', {
      says: 'the room is closed above the limit of oxygen',
      otherwise: 'refuse',
      on: 'oxygen_limit',
      source: cite('mass-balance'),
    }),
    limit('temperature_limit > start_temperature', {
      says: 'the room is closed below the limit of temperature',
      otherwise: 'refuse',
      on: 'start_temperature',
      source: cite('mass-balance'),
    }),
    limit('co2_limit <= 3 percent', {
      says: 'carbon dioxide is held to 3 %',
      advice: '4 % is immediately dangerous to life',
      otherwise: 'warn',
      on: 'co2_limit',
      source: cite('niosh-co2', '15 min limit'),
    }),
    limit('oxygen_limit >= 19.5 percent', {
      says: 'oxygen is held to 19.5 %',
      advice: 'Below it air counts as short of oxygen',
      otherwise: 'warn',
      on: 'oxygen_limit',
      source: cite('osha-oxygen'),
    }),
    limit('2 * sqrt(diffusivity * wanted) <= thickness', {
      says: 'the heat has not yet passed through the concrete',
      advice: 'Later the soil behind, which conducts worse, decides: see `heat-balance`',
      otherwise: 'warn',
      on: 'wanted',
      source: cite('carslaw-jaeger'),
    }),
  ],
  cautions: [
    'With an open fire, a stove or an engine inside no time closed up can be given.',
    'The time is an upper bound: measure carbon dioxide, and carbon monoxide, and go by the meter.',
    'People who work, crank or are afraid give off two to three times as much.',
    'Moisture is not counted apart: closed up, walls drip and the air is damp long before the temperature is at its limit.',
    'The room is taken as well mixed and people as awake to the alarm; a corner behind curtains is worse.',
  ],
  second: closedUpSecond,
  sketch: drawClosedUp,
  published: closedUpCases,
  example: {
    volume: '60 m^3',
    generation: '0.055 L/s',
    leakage: '0 m^3/hr',
    wanted: '2 hr',
    co2_start: '0.2 percent',
    co2_limit: '1 percent',
    oxygen_limit: '19.5 percent',
    gain: '1500 W',
    area: '110 m^2',
    start_temperature: '18 degC',
    temperature_limit: '29 degC',
    thickness: '0.3 m',
  },
})
