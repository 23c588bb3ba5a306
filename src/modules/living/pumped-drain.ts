import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { pumpedDrainCases } from './pumped-drain-cases.ts'
import { pumpedDrainInputs } from './pumped-drain-inputs.ts'
import { pumpedDrainSecond } from './pumped-drain-second.ts'
import { drawPumpedDrain } from './pumped-drain-sketch.ts'
import { pumpedDrainSteps } from './pumped-drain-steps.ts'

/** A sump that is pumped out: head and power of the pump, the volumes of the sump. */
export const pumpedDrain = defineModule({
  id: 'pumped-drain',
  version: '1.0.0',
  title: 'Pumped drain',
  asks: 'What head and power does the pump of the sump need, and is the sump large enough?',
  inputs: pumpedDrainInputs,
  steps: pumpedDrainSteps,
  results: ['H', 'h_f', 'v', 'P_w', 'P_el', 'V_min', 't_s'],
  covers: ['drainage'],
  drawing: ['bore', 'static_head', 'working_volume', 'pump_flow'],
  schedule: { title: 'Pump', lines: ['pump_flow', 'H', 'P_el', 'bore', 'run'] },
  limits: [
    limit('roughness <= 0.05 * bore', {
      says: 'the wall is smooth beside the bore, at most 0.05 of it',
      otherwise: 'refuse',
      on: 'roughness',
      source: cite('colebrook'),
    }),
    limit('Re >= 4000', {
      says: 'the flow in the rising main is turbulent',
      advice: 'Between 2300 and 4000 the friction is uncertain',
      otherwise: 'warn',
      on: 'pump_flow',
      source: cite('cengel-fluid'),
    }),
    limit('v <= 3 m/s', {
      says: 'the water in the rising main is not faster than 3 m/s',
      advice: 'Beyond it water hammer at the check valve is to be looked at',
      otherwise: 'warn',
      on: 'bore',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Two pumps, each for the whole flow, on two supplies, and a way to empty the sump by hand.',
    'A check valve and a valve to shut stand in the rising main, and its outlet lies above the highest flood: water must not run back.',
    'A floor drain joined to a sewer floods the room when the sewer does.',
    'The sump is covered, vented to the open and alarmed for a high level; in a room closed against gas its vent is shut.',
    'How much water runs in is for the engineer of the ground: a crack or a burst vessel brings more than seepage.',
  ],
  second: pumpedDrainSecond,
  sketch: drawPumpedDrain,
  published: pumpedDrainCases,
  example: {
    inflow: '0.5 L/s',
    pump_flow: '2 L/s',
    pump_head: '9 m',
    working_volume: '0.35 m^3',
    cycle: '10 min',
    spare_volume: '1 m^3',
    outage: '30 min',
    static_head: '5.2 m',
    run: '25 m',
    bore: '50 mm',
    roughness: '0.0015 mm',
    fittings: '6',
    hazen: '150',
    pump_efficiency: '0.45',
    motor_efficiency: '0.8',
  },
})
