import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, quantity, ratio } from '../words.ts'
import { chargeEfficiency, chargeVoltage, dailyCharge } from './charging-inputs.ts'
import { amperes, thermometer, volts, watts } from './power-units.ts'

const perKelvin = { SI: 'percent/K', US: 'percent/delta_degF' }
const coefficient = { unit: perKelvin, least: '-1 percent/K', most: '0 percent/K' } as const

const panel: Readonly<Record<string, Input>> = {
  panel_power: quantity('power', {
    says: 'rated power of one panel',
    symbol: 'P_1',
    unit: watts,
    above: '0 W',
    most: '1000 W',
  }),
  panel_voltage: quantity('voltage', {
    says: 'its voltage at rated power',
    symbol: 'V_mp',
    unit: volts,
    above: '0 V',
    most: '200 V',
  }),
  panel_current: quantity('current', {
    says: 'its current at rated power',
    symbol: 'I_mp',
    unit: amperes,
    above: '0 A',
    most: '40 A',
  }),
  open_voltage: quantity('voltage', {
    says: 'its voltage at open circuit',
    symbol: 'V_oc',
    unit: volts,
    above: '0 V',
    most: '250 V',
  }),
  short_current: quantity('current', {
    says: 'its current at short circuit',
    symbol: 'I_k',
    unit: amperes,
    above: '0 A',
    most: '50 A',
  }),
  power_coefficient: quantity('per_temperature', {
    says: 'change of its power for each kelvin of the cells',
    note: 'Silicon: -0.3 to -0.5 percent for each kelvin',
    symbol: 'gamma',
    ...coefficient,
    usual: ['-0.5 percent/K', '-0.2 percent/K'],
  }),
  voltage_coefficient: quantity('per_temperature', {
    says: 'change of its open voltage for each kelvin of the cells',
    note: 'Silicon: -0.25 to -0.35 percent for each kelvin',
    symbol: 'beta',
    ...coefficient,
    usual: ['-0.4 percent/K', '-0.2 percent/K'],
  }),
  cell_rating: quantity('temperature', {
    says: 'temperature of its cells at 800 watts a square metre and 20 °C',
    symbol: 'theta_N',
    unit: thermometer,
    least: '30 degC',
    most: '70 degC',
    usual: ['40 degC', '50 degC'],
  }),
}

/** What an array of panels is asked. */
export const pvArrayInputs: Readonly<Record<string, Input>> = {
  daily_charge: dailyCharge,
  charge_efficiency: chargeEfficiency,
  charge_voltage: chargeVoltage,
  irradiation: quantity('power_per_area', {
    says: "sun's energy on the plane of the panels in a day of the darkest month",
    note: 'From a table for the place, the month, the tilt and the bearing; as many peak-sun hours as kilowatt hours a square metre',
    symbol: 'H_d',
    unit: { SI: 'kWh/(m^2*day)', US: 'kWh/(m^2*day)' },
    least: '0.1 kWh/(m^2*day)',
    most: '12 kWh/(m^2*day)',
    usual: ['0.5 kWh/(m^2*day)', '7 kWh/(m^2*day)'],
  }),
  regulator: choice({
    says: 'kind of charge regulator',
    words: {
      tracking: 'it follows the point of greatest power: the power of the array counts',
      direct: 'it joins the array to the bank: the current of the array counts, at the voltage of the bank',
    },
  }),
  regulator_efficiency: ratio({
    says: 'efficiency of the regulator',
    symbol: 'eta_r',
    least: '0.8',
    most: '1',
    default: '0.95',
    when: { choice: 'regulator', is: ['tracking'] },
    source: cite('practice'),
  }),
  derate: ratio({
    says: 'factor for dirt, snow, shade, cables and unlike panels',
    note: 'Heat, the regulator and the charge efficiency are counted apart; with the charge efficiency about 0.62 was measured over years',
    symbol: 'k_d',
    least: '0.3',
    most: '1',
    usual: ['0.6', '0.95'],
  }),
  reserve_ratio: ratio({
    says: 'required charge of the array over charge to put back',
    note: '1.1 to 1.4 for stand-alone arrays: the surplus fills the bank again after dark days',
    symbol: 'r_q',
    least: '0.1',
    most: '5',
    usual: ['1.1', '1.4'],
  }),
  ...panel,
  series: ratio({ says: 'panels in a string', symbol: 'm_s', least: '1', most: '20' }),
  side_by_side: ratio({ says: 'strings of panels side by side', symbol: 'm_p', least: '1', most: '100' }),
  air_temperature: quantity('temperature', {
    says: 'air temperature by day in the darkest month',
    symbol: 'theta_a',
    unit: thermometer,
    least: '-40 degC',
    most: '50 degC',
  }),
  irradiance: quantity('power_per_area', {
    says: 'strength of the sun at which the heat of the cells is judged',
    symbol: 'G',
    unit: { SI: 'W/m^2', US: 'W/m^2' },
    least: '0 W/m^2',
    most: '1200 W/m^2',
    default: '800 W/m^2',
    source: cite('cell-temperature'),
  }),
  coldest_morning: quantity('temperature', {
    says: 'coldest morning of the record',
    symbol: 'theta_m',
    unit: thermometer,
    least: '-60 degC',
    most: '40 degC',
  }),
  regulator_voltage: quantity('voltage', {
    says: 'greatest voltage that the regulator bears',
    symbol: 'V_r',
    unit: volts,
    above: '0 V',
    most: '1000 V',
  }),
  regulator_current: quantity('current', {
    says: 'greatest current of panels that the regulator bears',
    symbol: 'I_g',
    unit: amperes,
    above: '0 A',
    most: '500 A',
  }),
}
