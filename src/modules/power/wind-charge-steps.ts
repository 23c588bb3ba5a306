import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { chargeBack } from './charging-inputs.ts'
import { ampereHours, wattHours, watts } from './power-units.ts'
import { airDensity, speedUnit } from './wind-charge-inputs.ts'

const cube = cite('swept-area')
const perArea = { SI: 'W/m^2', US: 'W/ft^2' }

const air: Step = when(
  { given: 'density' },
  {
    yes: [step('rho_a', 'density', { says: 'density of the air, as given', unit: airDensity })],
    no: [
      step('T_a', '(air_temperature / degC + 273.15) * K', { says: 'temperature of the air, absolute' }),
      step('rho_a', 'air_pressure / (287.05 J/(kg*K) * T_a)', {
        says: 'density of the air',
        unit: airDensity,
        source: cite('dry-air'),
      }),
    ],
  },
)

/** From speed and rotor to the charge of a day, and whether it is the share that is wanted. */
export const windChargeSteps: readonly Step[] = [
  air,
  step('v_h', 'speed * (hub_height / measured_height)^shear', {
    says: 'speed at the hub',
    unit: speedUnit,
    source: cite('wind-profile'),
  }),
  when(
    { choice: 'speed_is', is: ['mean'] },
    {
      yes: [
        step('k_v', '6 / pi', {
          says: 'mean of the cube of the speed over the cube of its mean',
          source: cite('swept-area', 'Rayleigh'),
        }),
      ],
      no: [step('k_v', '1', { says: 'a steady wind: its cube is the mean of its cube' })],
    },
  ),
  step('A_w', 'pi * diameter^2 / 4', {
    says: 'area that the rotor sweeps',
    unit: { SI: 'm^2', US: 'ft^2' },
    source: cube,
  }),
  step('p_w', 'rho_a * v_h^3 / 2', {
    says: 'power of the wind at that speed, for each area',
    unit: perArea,
    source: cube,
  }),
  step('P_w', 'k_v * p_w * A_w', { says: 'power of the wind through the rotor', unit: watts, source: cube }),
  step('P_b', '(16 / 27) * P_w', {
    says: 'the most that any rotor can take of it',
    unit: watts,
    source: cite('swept-area', 'Betz'),
  }),
  step('P_e', 'efficiency * P_w', {
    says: 'power at the bank, before the greatest of the set',
    unit: watts,
    source: cube,
  }),
  step('P_c', 'min(P_e, rated_power)', { says: 'power at the bank', unit: watts }),
  step('E_w', 'P_c * (24 hr)', { says: 'energy of a day at the bank', unit: wattHours, source: cite('power-balance') }),
  step('Q_w', 'E_w / charge_voltage', {
    says: 'charge of a day',
    unit: ampereHours,
    source: cite('power-balance'),
  }),
  step('Q_in', 'daily_charge / charge_efficiency', chargeBack),
  step('r_wind', 'Q_w / Q_in', { says: 'charge of the wind over charge to put back', symbol: 'r_v' }),
  check('enough', 'r_wind >= wanted_share', { says: 'the wind gives the share that is wanted' }),
]
