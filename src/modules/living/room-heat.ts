import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { each, look, step } from '../words.ts'
import { days, watts } from './living-units.ts'
import { latentHeat, sensibleHeat } from './metabolic-tables.ts'
import { vapourPressure } from './vapour-pressure.ts'

/** Heat that flows for each degree. */
export const lossUnit = { SI: 'W/K', US: 'Btu/(hr*delta_degF)' }
const perPerson = { SI: 'W/person', US: 'W/person' }
const balance = cite('mass-balance')

/** Sensible and latent heat in the room, by the rows `groups`, read at `theta_r` degrees Celsius. */
export const heatOfPeople: readonly Step[] = [
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

/** How much of the yearly swing of the surface reaches a depth, and how much later. */
export const yearlyWave = (depth: string): readonly Step[] => [
  step('k_z', `exp(-${depth} * sqrt(pi / ((365 day) * diffusivity)))`, {
    says: 'part of the swing that reaches there',
    source: cite('kusuda'),
  }),
  step('t_lag', `${depth} / 2 * sqrt((365 day) / (pi * diffusivity))`, {
    says: 'how much later it comes',
    symbol: 't_z',
    unit: days,
    source: cite('kusuda'),
  }),
]

/** What the fresh air takes. */
export const heatOfAir: Step = step('U_a', '(1.2 kg/m^3) * (1005 J/(kg*K)) * supply', {
  says: 'heat that the fresh air takes for each degree',
  unit: lossUnit,
  source: balance,
})

/** Vapour pressure of a room that has the temperature `room`. */
export const moistureOfRoom = (room: string): readonly Step[] => [
  vapourPressure('p_e', 'outdoor', 'vapour pressure of saturated air outdoors'),
  step('W_l', 'P_lat / (2430 kJ/kg)', {
    says: 'moisture that people give off',
    symbol: 'w_l',
    unit: { SI: 'kg/hr', US: 'lb/hr' },
    source: cite('steam-tables'),
  }),
  step('p_i', `humidity * p_e + W_l / supply * (461.5 J/(kg*K)) * (${room} / degC + 273.15) * (1 K)`, {
    says: 'vapour pressure of the room, the moisture in the fresh air',
    unit: { SI: 'Pa', US: 'Pa' },
    source: balance,
  }),
]
