import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { dcLoadCases } from './dc-load-cases.ts'
import { dcLoadInputs } from './dc-load-inputs.ts'
import { drawDcLoad } from './dc-load-sketch.ts'
import { dcLoadSteps } from './dc-load-steps.ts'

/** Daily energy and peak current of a list of loads on one direct voltage. */
export const dcLoad = defineModule({
  id: 'dc-load',
  version: '1.0.1',
  title: 'Load list at direct voltage',
  asks: 'What energy do these loads use in a day, and what current may they draw at once?',
  inputs: dcLoadInputs,
  steps: dcLoadSteps,
  results: ['E_day', 'Q_day', 'I_peak', 'I_run', 'P_mean'],
  covers: ['load'],
  schedule: { title: 'Loads', list: 'loads', columns: ['load', 'count', 'power', 'duty', 'E_l', 'at_peak'] },
  limits: [
    limit('least_voltage <= voltage', {
      says: 'the voltage at the end of discharge is at most the nominal one',
      otherwise: 'refuse',
      on: 'least_voltage',
      source: cite('power-balance'),
    }),
    limit('least_voltage >= 0.8 * voltage', {
      says: 'the voltage sinks to no less than 0.8 of the nominal one',
      advice: 'Most appliances and inverters switch off before that',
      otherwise: 'warn',
      on: 'least_voltage',
      source: cite('practice'),
    }),
    limit('E_day > 0 Wh', {
      says: 'some load runs for some time',
      otherwise: 'refuse',
      on: 'loads',
      source: cite('power-balance'),
    }),
  ],
  cautions: [
    'Every load is taken as one of constant power. A plain resistance draws most at the highest voltage instead: enter its power there.',
    'Blower and alarms never share a fuse with comfort loads.',
    'Mark what may be shed, and who sheds it: a load that is left out of the peak must be switched off by somebody who knows.',
    'One motor starts at a time. Where a controller may start several at once, enter them as one load.',
    'A list is an estimate until a meter has run for a day.',
  ],
  sketch: drawDcLoad,
  published: dcLoadCases,
  example: {
    voltage: '12 V',
    least_voltage: '10.8 V',
    standing_power: '3 W',
    loads: [
      { load: 'blower', count: '1', power: '45 W', duty: '24 hr', starting: '3' },
      { load: 'lamps', count: '6', power: '5 W', duty: '10 hr' },
      { load: 'radio', count: '1', power: '20 W', duty: '4 hr', efficiency: '0.9' },
      { load: 'drain pump', count: '1', power: '180 W', duty: '0.25 hr', starting: '5', at_peak: 'shed' },
    ],
  },
})
