import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { airFlow, litres, useUnit } from './fuel-store-inputs.ts'
import { airToBurn, dieselChart, fuelDensity, heatingValue, otherHeatingValue } from './fuel-tables.ts'
import { days, hours } from './power-units.ts'

const energy = { SI: 'kWh', US: 'kWh' }
const perVolume = { SI: 'MJ/L', US: 'Btu/gal' }
const balance = cite('power-balance')

const use: Step = when(
  { given: 'maker_use' },
  {
    yes: [step('q_f', 'maker_use', { says: 'fuel used in an hour, by the maker', unit: useUnit })],
    no: [
      when(
        { given: 'set_efficiency' },
        {
          yes: [
            step('q_f', 'load / (set_efficiency * H_v)', {
              says: 'fuel used in an hour, by the efficiency',
              unit: useUnit,
              source: balance,
            }),
          ],
          no: [
            look('q_f', dieselChart, {
              row: 'rated_power',
              column: 'x_l',
              says: 'fuel used in an hour, by the chart',
              unit: useUnit,
            }),
          ],
        },
      ),
    ],
  },
)

const store: readonly Step[] = [
  step('t_all', 'daily_running * (days / day)', { says: 'time it runs in all', unit: hours }),
  step('V_run', 'q_f * t_all', { says: 'fuel for that time', symbol: 'V_s', unit: litres }),
  step('V_f', 'V_run * (1 + reserve)', { says: 'fuel to store, with the reserve', unit: litres }),
  step('V_use', 'tank * tank_share', { says: 'fuel that the tanks hold for use', symbol: 'V_u', unit: litres }),
  check('stored', 'V_use >= V_f', { says: 'the tanks hold the fuel to store' }),
  step('t_lasts', 'V_use / (q_f * daily_running) * (1 day)', {
    says: 'days that the fuel in the tanks lasts, nothing in reserve',
    symbol: 't_last',
    unit: days,
  }),
  when(
    { choice: 'fuel', is: ['diesel'] },
    {
      yes: [
        check('fresh', 'turnover <= shelf_life', {
          says: 'the diesel is turned over within its shelf life',
          source: cite('practice'),
        }),
      ],
    },
  ),
]

const energies: readonly Step[] = [
  step('E_g', 'load * t_all', { says: 'electric energy made', unit: energy, source: balance }),
  step('eta_all', 'load / (q_f * H_v)', {
    says: 'electric energy over the lower heating value',
    symbol: 'eta_e',
    source: balance,
  }),
  look('H_o', otherHeatingValue, {
    row: 'fuel',
    says: 'lower heating value of the other fuel',
    unit: perVolume,
  }),
  step('V_other', 'V_f * H_v / H_o', {
    says: 'the other fuel with the same heat, burnt no better and no worse',
    symbol: 'V_o',
    unit: litres,
    source: balance,
  }),
  look('rho_f', fuelDensity, { row: 'fuel', says: 'density of the fuel', unit: { SI: 'kg/L', US: 'lb/gal' } }),
  step('m_f', 'V_f * rho_f', { says: 'mass of the fuel to store', unit: { SI: 'kg', US: 'lb' } }),
]

const air: readonly Step[] = [
  look('a_f', airToBurn, { row: 'fuel', says: 'air that just burns the fuel, by mass' }),
  step('G_a', 'excess_air * a_f * rho_f * q_f', {
    says: 'mass of air that the engine draws',
    unit: { SI: 'kg/hr', US: 'lb/hr' },
    source: cite('combustion'),
  }),
  step('Q_a', 'G_a / (1.2 kg/m^3)', {
    says: 'its volume, at 20 °C at the sea',
    symbol: 'Q_e',
    unit: airFlow,
    source: cite('combustion'),
  }),
  when(
    { given: 'air_supply' },
    {
      yes: [
        check('air', 'air_supply >= Q_a', {
          says: 'the room is given the air that the engine draws, cooling not counted',
        }),
      ],
    },
  ),
]

/** From load and hours to fuel, tanks, the other fuel and the air that the engine draws. */
export const fuelStoreSteps: readonly Step[] = [
  step('x_l', 'load / rated_power', { says: 'load over the power of the set' }),
  look('H_v', heatingValue, { row: 'fuel', says: 'lower heating value', unit: perVolume }),
  use,
  ...store,
  ...energies,
  ...air,
]
