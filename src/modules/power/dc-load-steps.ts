import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, each, step, take, when } from '../words.ts'
import { ampereHours, amperes, wattHours, watts } from './power-units.ts'

/** In each row: its power, energy and current, and the largest start so far. */
const ofEachLoad: Step = each('loads', [
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
    symbol: 'I_prev',
    unit: amperes,
  }),
  step('I_most', 'max(I_before, I_a)', { says: 'largest start with this one', symbol: 'I_m', unit: amperes }),
])

/** From the loads one by one to the energy of a day and the peak current. */
export const dcLoadSteps: readonly Step[] = [
  ofEachLoad,
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
]
