import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step } from '../words.ts'
import { areas, lengths, thermometer } from './living-units.ts'
import { heatOfAir, heatOfPeople, lossUnit, moistureOfRoom, yearlyWave } from './room-heat.ts'
import { vapourPressure } from './vapour-pressure.ts'

const balance = cite('mass-balance')

const ground: readonly Step[] = [
  step('z_g', 'cover + height / 2', { says: 'depth of the middle of the box', unit: lengths }),
  ...yearlyWave('z_g'),
  step('theta_g', 'ground_mean - ground_swing * k_z * cos(2 * pi * (date - coldest - t_lag) / (365 day))', {
    says: 'temperature of the ground there on that day',
    unit: thermometer,
    source: cite('kusuda'),
  }),
]

const losses: readonly Step[] = [
  heatOfAir,
  step('S_g', '2.756 * box_length * log(1 + cover / width)^(-0.59) * (cover / height)^(-0.078)', {
    says: 'shape factor of a long box, cover to its top, without its ends',
    unit: lengths,
    source: cite('holman', 'Table 3-1, after Sunderland and Johnson'),
  }),
  step('A_w', '2 * (width + height) * box_length', { says: 'faces of the box, without its ends', unit: areas }),
  step('R_g', '1 / (film * A_w) + wall / (concrete_conductivity * A_w) + 1 / (soil_conductivity * S_g)', {
    says: 'resistance of film, concrete and ground',
    unit: { SI: 'K/W', US: 'hr*delta_degF/Btu' },
    source: cite('incropera'),
  }),
  step('U_g', '1 / R_g', { says: 'heat that goes to the ground for each degree', unit: lossUnit, source: balance }),
  step('theta_in', 'outdoor + (P_sens - U_g * (outdoor - theta_g)) / (U_a + U_g)', {
    says: 'temperature at which the room settles',
    symbol: 'theta_i',
    unit: thermometer,
    source: balance,
  }),
]

const moisture: readonly Step[] = [
  ...moistureOfRoom('theta_in'),
  step('theta_s', 'theta_in - U_g * (theta_in - theta_g) / (film * A_w)', {
    says: 'face of the walls',
    unit: thermometer,
  }),
  vapourPressure('p_s', 'theta_s', 'vapour pressure of saturated air at the walls'),
]

/** Gains, ground, losses and where the room settles; then the moisture against the walls. */
export const heatBalanceSteps: readonly Step[] = [
  // where the author expects the room to settle: a limit holds it against where it does
  step('theta_r', 'people_at / degC', {
    says: 'the temperature at which the tables are read, in °C',
    symbol: 'theta_k',
  }),
  ...heatOfPeople,
  ...ground,
  ...losses,
  step('dT_in', 'theta_in - outdoor', {
    says: 'rise over outdoors',
    symbol: 'Delta_T_i',
    unit: { SI: 'K', US: 'delta_degF' },
  }),
  step('dT_lim', 'limit_temperature - outdoor', {
    says: 'rise that is allowed',
    symbol: 'Delta_T_lim',
    unit: { SI: 'K', US: 'delta_degF' },
  }),
  check('temperature', 'dT_in <= dT_lim', { says: 'the room settles within its limit of temperature' }),
  ...moisture,
  check('dry_walls', 'p_i <= p_s', { says: 'the walls stay dry' }),
]
