import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, choice, each, label, limit, list, quantity, ratio, step, take, when } from '../words.ts'
import { dcLoadCases } from './dc-load-cases.ts'
import { drawDcLoad } from './dc-load-sketch.ts'
import { ampereHours, amperes, hours, volts, wattHours, watts } from './power-units.ts'

/** Daily energy and peak current of a list of loads on one direct voltage. */
export const dcLoad = defineModule({
  id: 'dc-load',
  version: '1.0.0',
  title: 'Load list at direct voltage',
  asks: 'What energy do these loads use in a day, and what current may they draw at once?',
  inputs: {
    voltage: quantity('voltage', {
      says: 'nominal voltage of the bank',
      symbol: 'V_n',
      unit: volts,
      least: '5 V',
      most: '120 V',
      usual: ['12 V', '48 V'],
    }),
    least_voltage: quantity('voltage', {
      says: 'voltage at the end of discharge',
      note: '10.5 V to 11 V for lead-acid of 12 V: there a load of constant power draws most',
      symbol: 'V_min',
      unit: volts,
      above: '0 V',
      most: '120 V',
    }),
    standing_power: quantity('power', {
      says: 'draw of inverters and controllers, day and night',
      symbol: 'P_0',
      unit: watts,
      least: '0 W',
      most: '5 kW',
    }),
    loads: list('loads', {
      least: 1,
      most: 40,
      fields: {
        load: label({ says: 'what it is', optional: true }),
        count: ratio({ says: 'how many', symbol: 'n', least: '1', most: '1000' }),
        power: quantity('power', {
          says: 'power of one at its own terminals',
          symbol: 'P',
          unit: watts,
          above: '0 W',
          most: '20 kW',
        }),
        duty: quantity('time', {
          says: 'time it runs in a day',
          symbol: 't',
          unit: hours,
          least: '0 hr',
          most: '24 hr',
        }),
        efficiency: ratio({
          says: 'efficiency of its converter or inverter; 1 where none',
          symbol: 'eta',
          least: '0.3',
          most: '1',
          default: '1',
          source: cite('power-balance'),
        }),
        starting: ratio({
          says: 'its starting current over its running current',
          note: 'Motors take 3 to 7 times for a moment; 1 for lamps and radios',
          symbol: 'k_s',
          least: '1',
          most: '10',
          default: '1',
          source: cite('practice'),
        }),
        at_peak: choice({
          says: 'whether it may run at the hour of the peak',
          words: { together: 'it may run with the others', shed: 'it is switched off at the peak' },
          default: 'together',
        }),
      },
    }),
  },
  steps: [
    each('loads', [
      step('P_l', 'count * power / efficiency', {
        says: 'power drawn from the bank',
        unit: watts,
        source: cite('power-balance'),
      }),
      step('E_l', 'P_l * duty', { says: 'energy of this load in a day', unit: wattHours, source: cite('ieee-1013') }),
      step('I_l', 'P_l / least_voltage', {
        says: 'its current at the end of discharge',
        unit: amperes,
        source: cite('power-balance'),
      }),
      when(
        { choice: 'at_peak', is: ['together'] },
        {
          yes: [
            step('I_p', 'I_l', { says: 'its part in the running peak', unit: amperes }),
            step('I_a', '(starting - 1) * I_l / count', {
              says: 'what one of them adds while it starts',
              unit: amperes,
              source: cite('ieee-1013', 'momentary loads apart'),
            }),
          ],
          no: [
            step('I_p', '0 A', { says: 'its part in the running peak: switched off', unit: amperes }),
            step('I_a', '0 A', { says: 'what it adds while it starts: switched off', unit: amperes }),
          ],
        },
      ),
      carried('I_before', {
        first: '0 A',
        next: 'I_most',
        says: 'largest start so far',
        symbol: 'I_b',
        unit: amperes,
      }),
      step('I_most', 'max(I_before, I_a)', { says: 'largest start with this one', symbol: 'I_m', unit: amperes }),
    ]),
    step('E_0', 'standing_power * (24 hr)', { says: 'standing energy in a day', unit: wattHours }),
    step('E_day', 'sum(loads.E_l) + E_0', {
      says: 'energy drawn from the bank in a day',
      symbol: 'E_d',
      unit: wattHours,
      source: cite('ieee-1013'),
    }),
    step('Q_day', 'E_day / voltage', {
      says: 'charge drawn from the bank in a day',
      symbol: 'Q_d',
      unit: ampereHours,
      source: cite('ieee-1013'),
    }),
    step('P_mean', 'E_day / (24 hr)', { says: 'mean power over the day', symbol: 'P_m', unit: watts }),
    step('I_run', 'sum(loads.I_p) + standing_power / least_voltage', {
      says: 'running current of all that may run together',
      symbol: 'I_r',
      unit: amperes,
    }),
    take('I_start', {
      list: 'loads',
      of: 'I_most',
      from: 'last',
      says: 'largest addition of a start, one at a time',
      symbol: 'I_s',
      unit: amperes,
    }),
    step('I_peak', 'I_run + I_start', {
      says: 'peak current',
      unit: amperes,
      source: cite('ieee-1013', 'momentary loads apart'),
    }),
  ],
  results: ['E_day', 'Q_day', 'I_peak', 'I_run', 'P_mean'],
  covers: ['load'],
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
