import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { duration, forces, heads, litres, smallFlow } from './living-units.ts'
import { vapourPressure } from './vapour-pressure.ts'

const atmosphere = cite('us-atmosphere')
const statics = cite('statics')
const lift = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: heads, source: statics })

const suction: readonly Step[] = [
  lift('z_h', '(6356766 m) * altitude / (6356766 m + altitude)', 'height in the standard atmosphere'),
  step('p_a', '(101325 Pa) * (1 - (0.0065 K/m) * z_h / (288.15 K))^5.25588', {
    says: 'air pressure at the place',
    unit: { SI: 'Pa', US: 'Pa' },
    source: atmosphere,
  }),
  vapourPressure('p_w', 'water_temperature', 'vapour pressure of the water'),
  lift('h_t', '(p_a - p_w) / (density * (9.80665 m/s^2))', 'greatest lift by suction in theory'),
  lift('h_p', 'max(h_t - margin - suction_loss, 0 m)', 'greatest lift by suction in practice'),
  when(
    { choice: 'cylinder', is: ['above the water'] },
    { yes: [check('sucks', 'suction <= h_p', { says: 'the pump can suck the water up to its cylinder' })] },
  ),
]

const work: readonly Step[] = [
  step('A_p', 'pi / 4 * bore^2', { says: 'area of the piston', unit: { SI: 'mm^2', US: 'in^2' } }),
  step('V_1', 'A_p * stroke', { says: 'volume of one stroke', symbol: 'V_z', unit: litres, source: statics }),
  step('Q_h', 'V_1 * rate * slip / (1 min)', { says: 'water raised', unit: smallFlow }),
  step('F_r', 'density * (9.80665 m/s^2) * head * A_p + rod_weight', {
    says: 'force in the rod as it is drawn up',
    unit: forces,
    source: statics,
  }),
  step('F_h', 'F_r / (lever * efficiency)', { says: 'force on the handle', unit: forces }),
  step('P_h', 'density * (9.80665 m/s^2) * Q_h * head / efficiency / pumpers', {
    says: 'power that each who pumps must give',
    unit: { SI: 'W/person', US: 'W/person' },
    source: statics,
  }),
  step('Q_p', 'person_power * pumpers * efficiency / (density * (9.80665 m/s^2) * head)', {
    says: 'water that their power could raise',
    symbol: 'Q_m',
    unit: { SI: 'm^3/hr', US: 'gpm' },
    source: statics,
  }),
  step('t_p', 'daily_water / Q_h', { says: 'time to raise the water of a day', unit: duration }),
]

/** How far the pump can suck, what it raises, and whether people can work it. */
export const handPumpSteps: readonly Step[] = [
  ...suction,
  ...work,
  check('force', 'F_h <= force_limit', { says: 'people can draw the handle' }),
  check('power', 'P_h <= person_power', { says: 'people keep up the pumping in turns' }),
  check('enough', 't_p <= daily_time', { says: 'the water of a day is raised in the time there is' }),
]
