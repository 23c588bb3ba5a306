import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { coldFactor } from './battery-cold-factor.ts'
import { chargeBack } from './charging-inputs.ts'
import { ampereHours, amperes, days, wattHours } from './power-units.ts'

const charge = (name: string, formula: string, more: Omit<Parameters<typeof step>[2], 'unit'>): Step =>
  step(name, formula, { ...more, unit: ampereHours })

const worksheet: readonly Step[] = [
  step('D_use', 'discharge_most', { says: 'depth of discharge counted on', symbol: 'D_u' }),
  charge('C_u', 'Q_a / D_use', { says: 'capacity before factors', source: cite('pv-worksheet') }),
  step('k_age', '1', { says: 'ageing: the worksheet has no factor for it', symbol: 'k_a' }),
]

const standAlone: readonly Step[] = [
  charge('C_depth', 'Q_a / discharge_most', {
    says: 'capacity for the greatest depth of discharge',
    symbol: 'C_m',
    source: cite('ieee-1013', 'memory'),
  }),
  charge('C_daily', 'daily_charge / daily_most', {
    says: 'capacity for the daily depth of discharge',
    symbol: 'C_d',
    source: cite('ieee-1013', 'memory'),
  }),
  charge('C_life', 'Q_a / end_of_life', {
    says: 'capacity for the end of its life',
    symbol: 'C_e',
    source: cite('ieee-1013', 'memory'),
  }),
  charge('C_u', 'max(C_depth, C_daily, C_life)', {
    says: 'capacity before factors: the largest of the three',
    source: cite('ieee-1013', 'memory'),
  }),
  step('D_use', 'min(discharge_most, end_of_life)', { says: 'depth of discharge counted on', symbol: 'D_u' }),
  step('k_age', '1', { says: 'ageing: it stands in the end of life already', symbol: 'k_a' }),
]

const standby: readonly Step[] = [
  step('D_use', '1', { says: 'depth of discharge counted on: to the end voltage', symbol: 'D_u' }),
  charge('C_u', 'Q_a', { says: 'uncorrected size', source: cite('ieee-485', 'memory') }),
  step('k_age', 'ageing', { says: 'factor for ageing', symbol: 'k_a', source: cite('ieee-485', 'memory') }),
]

const cold: readonly Step[] = [
  when(
    { given: 'cold_factor' },
    {
      yes: [step('k_T', 'cold_factor', { says: "factor for cold, the maker's" })],
      no: [
        step('theta_F', 'cell_temperature / degF', {
          says: 'temperature of the cells in degrees Fahrenheit, as the table has it',
        }),
        step('theta_k', 'min(theta_F, 80)', { says: 'no credit is taken for warmth' }),
        look('k_T', coldFactor, { row: 'theta_k', says: 'factor for cold' }),
      ],
    },
  ),
]

const chosen: readonly Step[] = [
  step('n_req', 'ceil(C_req / unit_capacity)', { says: 'strings needed' }),
  step('n_s', 'round(voltage / unit_voltage)', { says: 'batteries in a string' }),
  charge('C_bank', 'strings * unit_capacity', { says: 'capacity of the chosen bank', symbol: 'C_b' }),
  step('E_bank', 'C_bank * voltage', { says: 'energy of the chosen bank', symbol: 'E_b', unit: wattHours }),
  step('n_all', 'strings * n_s', { says: 'batteries in all' }),
  check('capacity', 'C_bank >= C_req', { says: 'the chosen bank has the capacity needed' }),
  charge('C_net', 'C_bank / k_all', { says: 'what is left of it, cold and at the end of its life', symbol: 'C_n' }),
  step('D_end', 'Q_a / C_net', { says: 'depth of discharge at the end of the autonomy', symbol: 'D_e' }),
  step('t_hold', 'D_use * C_net / daily_charge * (1 day)', {
    says: 'days until the depth counted on',
    symbol: 't_h',
    unit: days,
    source: cite('power-balance'),
  }),
  step('I_rated', 'C_bank / rated_time', {
    says: 'current at which the capacity is rated',
    symbol: 'I_H',
    unit: amperes,
  }),
  step('Q_in', 'daily_charge / charge_efficiency', chargeBack),
]

/** From the daily charge to the capacity needed, and what the chosen bank makes of it. */
export const batteryBankSteps: readonly Step[] = [
  charge('Q_a', 'daily_charge * (autonomy / day)', {
    says: 'charge drawn over the days without charging',
    source: cite('power-balance'),
  }),
  when(
    { choice: 'method', is: ['worksheet'] },
    { yes: worksheet, no: [when({ choice: 'method', is: ['IEEE 1013'] }, { yes: standAlone, no: standby })] },
  ),
  ...cold,
  step('k_all', 'k_T * margin * k_age', { says: 'all factors together', symbol: 'k' }),
  charge('C_req', 'C_u * k_all', { says: 'capacity needed, at the rated hours', symbol: 'C_r' }),
  step('E_req', 'C_req * voltage', { says: 'the same as energy', symbol: 'E_r', unit: wattHours }),
  ...chosen,
]
