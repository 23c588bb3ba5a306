import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step } from '../words.ts'
import { thermometer, watts } from './living-units.ts'
import { moistureOfRoom } from './room-heat.ts'
import { vapourPressure } from './vapour-pressure.ts'

const balance = cite('mass-balance')
const settles = (name: string, walls: string, says: string): Step =>
  step(name, `theta_gc + (P_sens - U_a * (theta_gc - outdoor)) / (U_a + ${walls})`, {
    says,
    unit: thermometer,
    source: balance,
  })
const missing = (name: string, walls: string, says: string): Step =>
  step(name, `max(${walls} * (least_temperature - theta_gc) + U_a * (least_temperature - outdoor) - P_sens, 0 W)`, {
    says,
    unit: watts,
    source: balance,
  })

/** The room without heating, the heating for its least temperature, and whether its walls stay dry. */
export const heatingSteps: readonly Step[] = [
  settles('theta_u', 'U_w', 'room without heating, after the time to warm up'),
  settles('theta_z', 'U_z', 'room without heating, at the end of the stay'),
  missing('P_need', 'U_w', 'heating that makes the room warm in that time'),
  missing('P_end', 'U_k', 'heating that still keeps it warm at the end'),
  step('E_heat', 'P_need * warm_up + (P_need + P_end) / 2 * (days - warm_up)', {
    says: 'energy of the heating over the stay, at most',
    unit: { SI: 'kWh', US: 'kWh' },
    source: balance,
  }),
  check('heated', 'heater >= P_need', { says: 'the heaters bring the room to its least temperature in time' }),
  step('theta_x', 'max(theta_u, least_temperature)', { says: 'temperature of the room then', unit: thermometer }),
  ...moistureOfRoom('theta_x'),
  step('x_d', 'log(p_i / (611.2 Pa))', { says: 'logarithm of it over that at 0 °C', source: cite('magnus') }),
  step('theta_d', '(0 degC) + (1 K) * 243.12 * x_d / (17.62 - x_d)', {
    says: 'dew point of the air',
    unit: thermometer,
    source: cite('magnus'),
  }),
  step('theta_f', 'theta_x - (0.25 m^2*K/W) * U_w * (theta_x - theta_gc) / A_w', {
    says: 'face of the walls where air stands still, as behind bunks',
    unit: thermometer,
    source: cite('iso-13788'),
  }),
  vapourPressure('p_f', 'theta_f', 'vapour pressure of saturated air there'),
  check('dry_walls', 'p_i <= p_f', { says: 'the walls stay dry' }),
]
