import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { chargeBack } from './charging-inputs.ts'
import { ampereHours, amperes, hours, thermometer, volts, wattHours, watts } from './power-units.ts'

const sun: readonly Step[] = [
  step('Q_in', 'daily_charge / charge_efficiency', chargeBack),
  step('Q_req', 'reserve_ratio * Q_in', {
    says: 'charge wanted from the array in a day',
    symbol: 'Q_r',
    unit: ampereHours,
    source: cite('ieee-1013', 'array-to-load ratio'),
  }),
  step('t_sun', 'irradiation * (1 day) / (1 kW/m^2)', {
    says: 'peak-sun hours of a day',
    symbol: 't_s',
    unit: hours,
    source: cite('ieee-1013', 'resource at full sun'),
  }),
  step('theta_c', 'air_temperature + (cell_rating - 20 degC) / (800 W/m^2) * irradiance', {
    says: 'temperature of the cells',
    unit: thermometer,
    source: cite('cell-temperature'),
  }),
  step('k_theta', '1 + power_coefficient * (theta_c - 25 degC)', {
    says: 'factor for the heat of the cells',
    source: cite('cell-temperature'),
  }),
  step('n_all', 'series * side_by_side', { says: 'panels in all', symbol: 'm' }),
]

const tracking: readonly Step[] = [
  step('k_all', 'k_theta * derate * regulator_efficiency', {
    says: 'all factors on the power together',
    symbol: 'k_p',
  }),
  step('E_req', 'Q_req * charge_voltage', {
    says: 'energy wanted at the bank in a day',
    symbol: 'E_r',
    unit: wattHours,
    source: cite('power-balance'),
  }),
  step('P_req', 'E_req / (t_sun * k_all)', {
    says: 'rated power of the array that gives it',
    symbol: 'P_r',
    unit: watts,
    source: cite('power-balance'),
  }),
  step('n_req', 'ceil(P_req / panel_power)', { says: 'panels needed in all', symbol: 'm_r' }),
  step('P_rated', 'n_all * panel_power', { says: 'rated power of the array', symbol: 'P_a', unit: watts }),
  step('E_array', 'P_rated * t_sun * k_all', {
    says: 'energy of the array at the bank in a day',
    symbol: 'E_a',
    unit: wattHours,
    source: cite('power-balance'),
  }),
  step('Q_array', 'E_array / charge_voltage', {
    says: 'charge of the array in a day',
    symbol: 'Q_pv',
    unit: ampereHours,
    source: cite('power-balance'),
  }),
]

const direct: readonly Step[] = [
  step('I_req', 'Q_req / (t_sun * derate)', {
    says: 'current at rated power of the array that gives it',
    symbol: 'I_q',
    unit: amperes,
    source: cite('ieee-1013', 'array-to-load ratio'),
  }),
  step('n_req', 'series * ceil(I_req / panel_current)', { says: 'panels needed in all', symbol: 'm_r' }),
  step('P_rated', 'n_all * panel_power', { says: 'rated power of the array', symbol: 'P_a', unit: watts }),
  step('Q_array', 'side_by_side * panel_current * t_sun * derate', {
    says: 'charge of the array in a day',
    symbol: 'Q_pv',
    unit: ampereHours,
    source: cite('ieee-1013', 'array-to-load ratio'),
  }),
]

const fits: readonly Step[] = [
  step('r_array', 'Q_array / Q_in', { says: 'charge of the array over charge to put back', symbol: 'r_a' }),
  check('enough', 'r_array >= reserve_ratio', { says: 'the array gives the charge wanted in the darkest month' }),
  step('V_warm', 'series * panel_voltage * k_theta', {
    says: 'voltage of a string at rated power, warm',
    symbol: 'V_w',
    unit: volts,
    source: cite('cell-temperature'),
  }),
  check('charges', 'V_warm >= charge_voltage', { says: 'the voltage of a warm string is enough to charge the bank' }),
  step('V_cold', 'series * open_voltage * (1 + voltage_coefficient * (coldest_morning - 25 degC))', {
    says: 'open voltage of a string on the coldest morning',
    symbol: 'V_k',
    unit: volts,
    source: cite('nec', '690.7, from memory'),
  }),
  check('cold_morning', 'V_cold <= regulator_voltage', {
    says: 'the regulator bears the voltage of the coldest morning',
    source: cite('nec', '690.7, from memory'),
  }),
  step('I_most', '1.25 * side_by_side * short_current', {
    says: 'greatest current of the array, for regulator and fuse',
    symbol: 'I_x',
    unit: amperes,
    source: cite('nec', '690.8, from memory'),
  }),
  check('regulator_carries', 'I_most <= regulator_current', {
    says: 'the regulator bears the greatest current',
    source: cite('nec', '690.8, from memory'),
  }),
  step('I_cable', '1.25 * I_most', {
    says: 'current that the cables of the array must be able to carry',
    symbol: 'I_y',
    unit: amperes,
    source: cite('nec', '690.8, from memory'),
  }),
]

/** From the daily charge and the sun to panels needed, and whether the chosen ones fit bank and regulator. */
export const pvArraySteps: readonly Step[] = [
  ...sun,
  when({ choice: 'regulator', is: ['tracking'] }, { yes: tracking, no: direct }),
  ...fits,
]
