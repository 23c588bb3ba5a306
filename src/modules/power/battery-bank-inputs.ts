import type { Input } from '../module.ts'
import { choice, quantity, ratio } from '../words.ts'
import { batteryBankFactors } from './battery-bank-factors.ts'
import { chargeEfficiency, dailyCharge } from './charging-inputs.ts'
import { ampereHours, amperes, days, hours, thermometer, volts } from './power-units.ts'

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
  daily_charge: dailyCharge,
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
  ...batteryBankFactors,
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
  charge_efficiency: chargeEfficiency,
}
