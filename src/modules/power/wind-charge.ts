import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { windChargeCases } from './wind-charge-cases.ts'
import { windChargeInputs } from './wind-charge-inputs.ts'
import { drawWindCharge } from './wind-charge-sketch.ts'
import { windChargeSteps } from './wind-charge-steps.ts'

/** Charge of a day that a wind set gives, by the area its rotor sweeps. */
export const windCharge = defineModule({
  id: 'wind-charge',
  version: '1.0.0',
  title: 'Charge by the wind',
  asks: 'What charge does this wind set give in a day, and is it the share that is wanted?',
  inputs: windChargeInputs,
  covers: ['charging'],
  drawing: ['diameter', 'hub_height'],
  steps: windChargeSteps,
  results: ['Q_w', 'r_wind', 'P_c', 'P_w', 'P_b', 'v_h', 'rho_a', 'Q_in'],
  limits: [
    limit('P_c <= 0.4 * rated_power', {
      says: 'the mean power is at most 0.4 of the greatest',
      advice: "Near the greatest power the cube of the speed promises too much: use the maker's curve",
      when: { choice: 'speed_is', is: ['mean'] },
      otherwise: 'warn',
      on: 'rated_power',
      source: cite('practice'),
    }),
    limit('hub_height <= 5 * measured_height and hub_height >= measured_height / 5', {
      says: 'the hub is within five times the height of measuring, up or down',
      advice: 'The rise of speed with height is not carried so far: measure at the hub',
      otherwise: 'warn',
      on: 'hub_height',
      source: cite('wind-profile'),
    }),
    limit('hub_height >= diameter / 2 + 2 m', {
      says: 'the blades pass at least 2 m above the ground',
      otherwise: 'refuse',
      on: 'hub_height',
      source: cite('practice'),
    }),
    limit('v_h >= 3 m/s', {
      says: 'the wind at the hub is at least 3 metres in a second',
      advice: 'Most small sets give nothing below that',
      otherwise: 'warn',
      on: 'speed',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'A wind set must never be left without load in a gale: brake, dump load and furling are part of it.',
    'Mast, guys and footing are a structure of their own: gale, ice and the thrust of the rotor are not in this calculation.',
    'A month without wind follows one with too much of it: the wind is a second source, not the only one.',
    'Noise, a visible mast and its lightning come to the shelter with it. Cables are led in where surge arresters can be reached.',
    'Trees and buildings within twenty heights take more of the wind than any exponent says.',
    {
      says: 'The mean of the cube is that of speeds spread as Rayleigh has them. The cut-in, the furling and the greatest power of the set take away from it: the share that reaches the bank must have them in it.',
      when: { choice: 'speed_is', is: ['mean'] },
    },
  ],
  sketch: drawWindCharge,
  published: windChargeCases,
  example: {
    diameter: '1.6 m',
    rated_power: '600 W',
    efficiency: '0.2',
    speed_is: 'mean',
    speed: '5.5 m/s',
    measured_height: '10 m',
    hub_height: '12 m',
    air_temperature: '5 degC',
    daily_charge: '60 Ah',
    charge_efficiency: '0.9',
    charge_voltage: '14 V',
    wanted_share: '1',
  },
})
