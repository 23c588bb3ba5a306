import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { pvArrayCases } from './pv-array-cases.ts'
import { pvArrayInputs } from './pv-array-inputs.ts'
import { drawPvArray } from './pv-array-sketch.ts'
import { pvArraySteps } from './pv-array-steps.ts'

/** Panels for the daily charge of a bank by peak-sun hours, and whether they fit bank and regulator. */
export const pvArray = defineModule({
  id: 'pv-array',
  version: '1.0.1',
  title: 'Panels by peak-sun hours',
  asks: 'What panels put back the daily charge in the darkest month, and do the chosen ones fit the regulator?',
  inputs: pvArrayInputs,
  covers: ['charging'],
  drawing: ['series', 'side_by_side', 'panel_power'],
  steps: pvArraySteps,
  results: ['n_req', 'Q_array', 'r_array', 'P_rated', 'V_cold', 'I_most', 'I_cable', 'Q_in'],
  limits: [
    limit('k_theta > 0', {
      says: 'the heat of the cells leaves some of the power',
      otherwise: 'refuse',
      on: 'power_coefficient',
      source: cite('cell-temperature'),
    }),
    limit('abs(panel_power / (panel_voltage * panel_current) - 1) <= 0.05', {
      says: 'the rated power is that of its voltage and current, within 5 percent',
      advice: 'One of the three figures belongs to another panel',
      otherwise: 'refuse',
      on: 'panel_power',
      source: cite('power-balance'),
    }),
    limit('open_voltage > panel_voltage and short_current > panel_current', {
      says: 'open voltage and short current are above those at rated power',
      otherwise: 'refuse',
      on: 'open_voltage',
      source: cite('power-balance'),
    }),
    limit('derate * charge_efficiency <= 0.85', {
      says: 'losses are not counted too small',
      advice: 'About 0.62 in all was measured over years on a stand-alone system',
      otherwise: 'warn',
      on: 'derate',
      source: cite('practice'),
    }),
    limit('irradiation >= 0.5 kWh/(m^2*day)', {
      says: 'the darkest month has half a peak-sun hour or more',
      advice: 'So near to darkness the bank lives by another source: work it by that',
      otherwise: 'warn',
      on: 'irradiation',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Panels stand on the surface and are lost first: keep spares inside, a connection that can be made from inside, and another way to charge.',
    'Peak-sun hours are a mean of years. The bank, not the array, carries a run of dark days.',
    'Shade on one cell may halve a string; snow and dust stop it. Somebody must be able to clear the panels.',
    'Daylight makes the circuit live: a switch for direct current stands on both sides, and connections are covered before they are opened.',
    'A fuse for each string where three or more stand side by side; all of it rated for the direct voltage.',
    {
      says: 'Joined directly, the array works at the voltage of the bank: its current counts, and a panel of higher voltage is wasted.',
      when: { choice: 'regulator', is: ['direct'] },
    },
  ],
  sketch: drawPvArray,
  published: pvArrayCases,
  example: {
    daily_charge: '60 Ah',
    charge_efficiency: '0.9',
    charge_voltage: '14 V',
    irradiation: '2.4 kWh/(m^2*day)',
    regulator: 'tracking',
    derate: '0.8',
    reserve_ratio: '1.2',
    panel_power: '180 W',
    panel_voltage: '18.9 V',
    panel_current: '9.52 A',
    open_voltage: '22.8 V',
    short_current: '10.1 A',
    power_coefficient: '-0.38 percent/K',
    voltage_coefficient: '-0.29 percent/K',
    cell_rating: '45 degC',
    series: '2',
    side_by_side: '2',
    air_temperature: '12 degC',
    coldest_morning: '-12 degC',
    regulator_voltage: '100 V',
    regulator_current: '30 A',
  },
})
