import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { handPumpCases } from './hand-pump-cases.ts'
import { handPumpInputs } from './hand-pump-inputs.ts'
import { handPumpSteps } from './hand-pump-steps.ts'

/** A hand pump on a well: how far it sucks, what it raises, and what force and power that takes. */
export const handPump = defineModule({
  id: 'hand-pump',
  version: '1.0.0',
  title: 'Hand pump on a well',
  asks: 'Can the pump suck the water, and can people raise what a day needs with it?',
  inputs: handPumpInputs,
  steps: handPumpSteps,
  results: ['h_t', 'h_p', 'Q_h', 'F_h', 'P_h', 't_p'],
  covers: ['well'],
  drawing: ['bore', 'stroke', 'suction'],
  limits: [
    limit('suction <= head', {
      says: 'the cylinder stands no higher than the outlet',
      otherwise: 'refuse',
      on: 'suction',
      source: cite('statics'),
    }),
    limit('suction <= 7.5 m', {
      says: 'the lift by suction is at most 7.5 m',
      advice: 'Hang the cylinder in the well',
      otherwise: 'warn',
      on: 'suction',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'A pump that must lift more than it can suck has its cylinder down the well, whatever its handle.',
    'The water sinks while it is pumped and in dry years: the lowest water in use counts.',
    'Keep the head of the well sealed and drained, 30 m from latrines and drains, and the water tested: groundwater may carry what fallout and floods bring.',
    'Leathers and valves wear: keep spares, and prime water for a suction pump.',
  ],
  published: handPumpCases,
  example: {
    cylinder: 'above the water',
    altitude: '20 m',
    water_temperature: '9 degC',
    suction: '4.5 m',
    suction_loss: '0.5 m',
    head: '7 m',
    bore: '75 mm',
    stroke: '120 mm',
    rate: '40',
    slip: '0.85',
    lever: '5',
    efficiency: '0.7',
    rod_weight: '10 N',
    force_limit: '200 N',
    pumpers: '1 person',
    daily_water: '150 L',
    daily_time: '1 hr',
  },
})
