import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, quantity, ratio } from '../words.ts'
import { ampereHours, amperes, days, hours, thermometer, volts } from './power-units.ts'

const ownDepth = { choice: 'method', is: ['worksheet', 'IEEE 1013'] }

/** What the sizing of a bank asks for. */
export const batteryBankInputs: Readonly<Record<string, Input>> = {
  method: choice({
    says: 'rule of sizing',
    words: {
      worksheet: 'worksheet of small photovoltaic systems: reserve over depth of discharge, by the factor for cold',
      'IEEE 1013': 'stand-alone photovoltaic: the largest of three demands, by the factor for cold and the margin',
      'IEEE 485': 'stationary standby: uncorrected size by the factors for cold, margin and ageing',
    },
  }),
  chemistry: choice({
    says: 'kind of cell',
    words: {
      'lead-acid': 'lead-acid, deep cycle',
      'lithium iron phosphate': 'lithium iron phosphate with its own management of cells',
    },
  }),
  daily_charge: quantity('charge', {
    says: 'charge drawn from the bank in a day',
    symbol: 'Q_d',
    unit: ampereHours,
    above: '0 Ah',
  }),
  running_current: quantity('current', {
    says: 'running current at the peak',
    symbol: 'I_r',
    unit: amperes,
    above: '0 A',
  }),
  autonomy: quantity('time', {
    says: 'days without charging',
    symbol: 't_a',
    unit: days,
    above: '0 day',
    most: '60 day',
    usual: ['1 day', '14 day'],
  }),
  voltage: quantity('voltage', {
    says: 'nominal voltage of the bank',
    symbol: 'V_n',
    unit: volts,
    least: '2 V',
    most: '120 V',
    usual: ['12 V', '48 V'],
  }),
  discharge_most: ratio({
    says: 'greatest depth of discharge',
    note: '0.5 for deep-cycle lead-acid, 0.8 at most; 0.8 to 0.9 for lithium iron phosphate',
    symbol: 'D_m',
    above: '0',
    most: '0.9',
    usual: ['0.3', '0.8'],
    default: '0.5',
    when: ownDepth,
    source: cite('pv-worksheet', 'lead-acid, deep cycle'),
  }),
  daily_most: ratio({
    says: 'greatest depth of discharge in one day',
    symbol: 'D_1',
    above: '0',
    most: '0.8',
    usual: ['0.1', '0.5'],
    default: '0.2',
    when: { choice: 'method', is: ['IEEE 1013'] },
    source: cite('practice'),
  }),
  end_of_life: ratio({
    says: 'share of the rated capacity at the end of its life',
    symbol: 'e',
    least: '0.5',
    most: '1',
    default: '0.8',
    when: { choice: 'method', is: ['IEEE 1013'] },
    source: cite('ieee-1013', 'memory'),
  }),
  ageing: ratio({
    says: 'factor for ageing',
    symbol: 'k_l',
    least: '1',
    most: '2',
    usual: ['1.2', '1.3'],
    default: '1.25',
    when: { choice: 'method', is: ['IEEE 485'] },
    source: cite('ieee-485', '1/0.80'),
  }),
  margin: ratio({
    says: 'design margin',
    note: '1.10 to 1.15 is usual; 1 where the rule has none',
    symbol: 'k_m',
    least: '1',
    most: '2',
    usual: ['1', '1.25'],
  }),
  cell_temperature: quantity('temperature', {
    says: 'lowest temperature of the cells while they are needed',
    symbol: 'theta',
    unit: thermometer,
    least: '-20 degC',
    most: '45 degC',
    usual: ['0 degC', '35 degC'],
  }),
  cold_factor: ratio({
    says: "maker's factor on the capacity at this temperature",
    symbol: 'k_c',
    least: '1',
    most: '3',
    optional: true,
  }),
  unit_capacity: quantity('charge', {
    says: 'rated capacity of one battery',
    symbol: 'C_1',
    unit: ampereHours,
    above: '0 Ah',
  }),
  unit_voltage: quantity('voltage', {
    says: 'nominal voltage of one battery',
    symbol: 'V_1',
    unit: volts,
    least: '1 V',
    most: '120 V',
  }),
  strings: ratio({ says: 'strings side by side', symbol: 'n_p', least: '1', most: '20' }),
  rated_time: quantity('time', {
    says: 'hours of discharge at which the capacity is rated',
    symbol: 't_H',
    unit: hours,
    least: '1 hr',
    most: '240 hr',
    usual: ['5 hr', '100 hr'],
  }),
  charge_efficiency: ratio({
    says: 'charge given back over charge put in',
    note: '0.85 to 0.95 for lead-acid, 0.98 to 0.99 for lithium',
    symbol: 'eta_q',
    least: '0.5',
    most: '1',
    usual: ['0.85', '0.99'],
  }),
}
