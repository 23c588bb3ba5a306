import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, list, quantity, ratio } from '../words.ts'
import { hours, volts, watts } from './power-units.ts'

/** The loads, each with its power, its hours and how it starts. */
const loads: Input = list('loads', {
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
})

/** What a list of loads is asked. */
export const dcLoadInputs: Readonly<Record<string, Input>> = {
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
  loads,
}
