import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step } from '../words.ts'
import { duration, heads, speeds, volumes, watts } from './living-units.ts'
import { frictionFactor } from './pipe-friction.ts'

const darcy = cite('cengel-fluid', '8-5 and 8-6')
const practice = cite('practice')
const head = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: heads, source: darcy })

/** Head and power of the pump, and whether the sump lets it rest and holds while it is mended. */
export const pumpedDrainSteps: readonly Step[] = [
  step('v', '4 * pump_flow / (pi * bore^2)', { says: 'speed in the rising main', unit: speeds }),
  step('Re', 'v * bore / viscosity', { says: 'Reynolds number' }),
  frictionFactor({ Re: 'Re', roughness: 'roughness', bore: 'bore' }),
  head('h_v', 'v^2 / (2 * (9.80665 m/s^2))', 'velocity head'),
  head('h_f', 'f_d * run / bore * h_v', 'head lost in the pipe'),
  head('H', 'static_head + h_f + fittings * h_v', 'head that the pump must give'),
  step('P_w', 'density * (9.80665 m/s^2) * pump_flow * H', { says: 'power in the water', unit: watts, source: darcy }),
  step('P_p', 'P_w / pump_efficiency', { says: 'power at the shaft of the pump', unit: watts }),
  step('P_el', 'P_p / motor_efficiency', { says: 'power of the motor', symbol: 'P_e', unit: watts }),
  step('V_min', 'pump_flow * cycle / 4', {
    says: 'least working volume: water that runs in at half the flow of the pump',
    unit: volumes,
    source: practice,
  }),
  step('t_s', 'spare_volume / inflow', {
    says: 'time until water stands in the room without a pump',
    symbol: 't_u',
    unit: duration,
  }),
  check('head', 'pump_head >= H', { says: 'the pump gives the head at this flow' }),
  check('keeps_up', 'pump_flow >= inflow', { says: 'one pump keeps up with the water' }),
  check('rests', 'working_volume >= V_min', { says: 'the sump lets the motor rest between starts' }),
  check('cleans', 'v >= 0.75 m/s', { says: 'the rising main keeps itself clean', source: practice }),
  check('holds', 't_s >= outage', { says: 'the sump holds while a pump is replaced', source: practice }),
]
