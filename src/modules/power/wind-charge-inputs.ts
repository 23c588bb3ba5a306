import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, quantity, ratio } from '../words.ts'
import { chargeEfficiency, chargeVoltage, dailyCharge } from './charging-inputs.ts'
import { thermometer, watts } from './power-units.ts'

export const metres = { SI: 'm', US: 'ft' }
export const speedUnit = { SI: 'm/s', US: 'mph' }
export const airDensity = { SI: 'kg/m^3', US: 'lb/ft^3' }

/** What a wind set is asked. */
export const windChargeInputs: Readonly<Record<string, Input>> = {
  diameter: length({
    says: 'diameter of the rotor',
    note: 'Tip to tip, not the length of a blade',
    symbol: 'D_w',
    unit: metres,
    above: '0 m',
    most: '100 m',
    usual: ['0.8 m', '20 m'],
  }),
  rated_power: quantity('power', {
    says: 'greatest power that the set gives',
    symbol: 'P_g',
    unit: watts,
    above: '0 W',
  }),
  efficiency: ratio({
    says: "share of the wind's power that reaches the bank",
    note: 'Rotor, generator, rectifier and cable together: 0.15 to 0.30 for small sets. No rotor takes more than 16/27',
    symbol: 'eta_w',
    above: '0',
    most: '0.5926',
    usual: ['0.15', '0.30'],
  }),
  speed_is: choice({
    says: 'what the speed of the wind is',
    words: {
      mean: 'the mean of a long time: the speeds about it are spread as Rayleigh has them',
      steady: 'the speed of this hour',
    },
  }),
  speed: quantity('velocity', {
    says: 'speed of the wind at the mast where it was measured',
    symbol: 'v_r',
    unit: speedUnit,
    above: '0 m/s',
    most: '30 m/s',
    usual: ['3 m/s', '15 m/s'],
  }),
  measured_height: length({
    says: 'height above ground at which it was measured',
    symbol: 'z_r',
    unit: metres,
    least: '1 m',
    most: '200 m',
  }),
  hub_height: length({
    says: 'height of the hub above ground',
    symbol: 'z_h',
    unit: metres,
    least: '1 m',
    most: '200 m',
  }),
  shear: ratio({
    says: 'exponent of the rise of speed with height',
    note: '1/7 over open ground; more over scrub and houses, where a low hub gets less',
    symbol: 'alpha_v',
    least: '0',
    most: '0.5',
    usual: ['0.1', '0.3'],
    default: '0.143',
    source: cite('wind-profile', 'open ground'),
  }),
  air_temperature: quantity('temperature', {
    says: 'temperature of the air',
    symbol: 'theta_a',
    unit: thermometer,
    least: '-60 degC',
    most: '50 degC',
  }),
  air_pressure: quantity('pressure', {
    says: 'pressure of the air at the site',
    note: 'About 1.2 kPa less for each 100 m above the sea',
    symbol: 'p_a',
    unit: { SI: 'kPa', US: 'inHg' },
    least: '40 kPa',
    most: '110 kPa',
    default: '101.325 kPa',
    source: cite('dry-air', 'standard atmosphere at the sea'),
  }),
  density: quantity('density', {
    says: 'density of the air, where known',
    symbol: 'rho_g',
    unit: airDensity,
    least: '0.4 kg/m^3',
    most: '1.8 kg/m^3',
    optional: true,
  }),
  daily_charge: dailyCharge,
  charge_efficiency: chargeEfficiency,
  charge_voltage: chargeVoltage,
  wanted_share: ratio({
    says: 'share of the charge to put back that the wind is to give',
    symbol: 'r_w',
    least: '0',
    most: '5',
    usual: ['0.1', '1.5'],
  }),
}
