import type { CaseInput, PublishedCase } from '../module.ts'

/** A panel of 75 W, its cells kept at 25 degC, into a bank that charges at its nominal 12 V. */
const plain: Readonly<Record<string, CaseInput>> = {
  charge_voltage: '12 V',
  reserve_ratio: '1',
  panel_power: '102 W',
  panel_voltage: '17 V',
  panel_current: '6 A',
  open_voltage: '21 V',
  short_current: '6.5 A',
  power_coefficient: '-0.4 percent/K',
  voltage_coefficient: '-0.3 percent/K',
  cell_rating: '45 degC',
  irradiance: '0 W/m^2',
  air_temperature: '25 degC',
  coldest_morning: '25 degC',
  series: '1',
  side_by_side: '1',
  regulator_voltage: '50 V',
  regulator_current: '20 A',
}

/** Definitions and balances worked apart. */
export const pvArrayCases: readonly PublishedCase[] = [
  {
    id: 'PV1',
    source: 'IEEE Std 1013, definition of the array-to-load ratio: the resource times the current at rated power',
    status: 'computed',
    says: '5.0 kWh a square metre and day on a panel of 6 A give 30 Ah',
    inputs: {
      ...plain,
      regulator: 'direct',
      daily_charge: '20 Ah',
      charge_efficiency: '1',
      irradiation: '5.0 kWh/(m^2*day)',
      derate: '1',
    },
    answers: { t_sun: '5.0 hr', Q_array: '30 Ah', r_array: '1.5' },
    tolerance: { relative: 1e-9 },
  },
  {
    id: 'PV2',
    source: 'Energy balance worked by hand: 720 Wh a day, 4.5 h of full sun, factors 0.77 and 0.90',
    status: 'computed',
    says: 'rated power of the array',
    inputs: {
      ...plain,
      regulator: 'tracking',
      regulator_efficiency: '1',
      daily_charge: '60 Ah',
      charge_efficiency: '0.90',
      irradiation: '4.5 kWh/(m^2*day)',
      derate: '0.77',
    },
    answers: { P_req: '230.9 W' },
  },
  {
    id: 'PV3',
    source: 'Definition of the rated cell temperature: at 800 W a square metre and 20 °C the cells have it',
    status: 'computed',
    says: 'cells of 45 °C, and rated power at 25 °C',
    inputs: {
      ...plain,
      regulator: 'tracking',
      daily_charge: '20 Ah',
      charge_efficiency: '0.9',
      irradiation: '4 kWh/(m^2*day)',
      derate: '0.8',
      air_temperature: '20 degC',
      irradiance: '800 W/m^2',
    },
    answers: { theta_c: '45 degC', k_theta: '0.92' },
    tolerance: { relative: 1e-9 },
  },
]
