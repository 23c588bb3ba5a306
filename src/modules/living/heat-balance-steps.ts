import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, look, step } from '../words.ts'
import { areas, days, lengths, thermometer, watts } from './living-units.ts'
import { latentHeat, sensibleHeat } from './metabolic-tables.ts'
import { vapourPressure } from './vapour-pressure.ts'

const lossUnit = { SI: 'W/K', US: 'Btu/(hr*delta_degF)' }
const perPerson = { SI: 'W/person', US: 'W/person' }
const pascals = { SI: 'Pa', US: 'Pa' }
const balance = cite('mass-balance')
const loss = (name: string, formula: string, says: string, source = balance): Step =>
  step(name, formula, { says, unit: lossUnit, source })

/** Heat of people, read where the author expects the room to settle: a limit holds it against where it does. */
const gains: readonly Step[] = [
  step('theta_r', 'people_at / degC', {
    says: 'the temperature at which the tables are read, in °C',
    symbol: 'theta_k',
  }),
  each('groups', [
    look('q_s', sensibleHeat, {
      row: 'activity',
      column: 'theta_r',
      says: 'sensible heat of one',
      symbol: 'q_S',
      unit: perPerson,
    }),
    look('q_l', latentHeat, {
      row: 'activity',
      column: 'theta_r',
      says: 'latent heat of one',
      symbol: 'q_L',
      unit: perPerson,
    }),
    step('P_s', 'count * q_s', { says: 'sensible heat of the group', unit: watts }),
    step('P_l', 'count * q_l', { says: 'latent heat of the group', unit: watts }),
  ]),
  step('P_sens', 'sum(groups.P_s) + equipment', { says: 'sensible heat in all', symbol: 'P_S', unit: watts }),
  step('P_lat', 'sum(groups.P_l)', { says: 'latent heat in all', symbol: 'P_L', unit: watts }),
]

const ground: readonly Step[] = [
  step('z_g', 'cover + height / 2', { says: 'depth of the middle of the box', unit: lengths }),
  step('k_z', 'exp(-z_g * sqrt(pi / ((365 day) * diffusivity)))', {
    says: 'part of the swing that reaches there',
    source: cite('kusuda'),
  }),
  step('t_lag', 'z_g / 2 * sqrt((365 day) / (pi * diffusivity))', {
    says: 'how much later it comes',
    symbol: 't_z',
    unit: days,
    source: cite('kusuda'),
  }),
  step('theta_g', 'ground_mean - ground_swing * k_z * cos(2 * pi * (date - coldest - t_lag) / (365 day))', {
    says: 'temperature of the ground there on that day',
    unit: thermometer,
    source: cite('kusuda'),
  }),
]

const losses: readonly Step[] = [
  loss('U_a', '(1.2 kg/m^3) * (1005 J/(kg*K)) * supply', 'heat that the fresh air takes for each degree'),
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
  loss('U_g', '1 / R_g', 'heat that goes to the ground for each degree'),
  step('theta_in', 'outdoor + (P_sens - U_g * (outdoor - theta_g)) / (U_a + U_g)', {
    says: 'temperature at which the room settles',
    symbol: 'theta_i',
    unit: thermometer,
    source: balance,
  }),
]

const moisture: readonly Step[] = [
  vapourPressure('p_e', 'outdoor', 'vapour pressure of saturated air outdoors'),
  step('W_l', 'P_lat / (2430 kJ/kg)', {
    says: 'moisture that people give off',
    symbol: 'w_l',
    unit: { SI: 'kg/hr', US: 'lb/hr' },
    source: cite('steam-tables'),
  }),
  step('p_i', 'humidity * p_e + W_l / supply * (461.5 J/(kg*K)) * (theta_in / degC + 273.15) * (1 K)', {
    says: 'vapour pressure of the room, the moisture in the fresh air',
    unit: pascals,
    source: balance,
  }),
  step('theta_s', 'theta_in - U_g * (theta_in - theta_g) / (film * A_w)', {
    says: 'face of the walls',
    unit: thermometer,
  }),
  vapourPressure('p_s', 'theta_s', 'vapour pressure of saturated air at the walls'),
]

/** Gains, ground, losses and where the room settles; then the moisture against the walls. */
export const heatBalanceSteps: readonly Step[] = [
  ...gains,
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
