import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, look, step, when } from '../words.ts'
import { bendLoss, entranceLoss, outletLoss } from './duct-fittings.ts'
import { airPressure, speeds, watts } from './living-units.ts'
import { frictionFactor } from './pipe-friction.ts'

const darcy = cite('cengel-fluid', '8-5 and 8-6')

const lossOf = (name: string, formula: string, says: string, symbol: string): Step =>
  step(name, formula, { says, symbol, unit: airPressure })

/** Each duct: speed, friction, fittings, loss, and its part in the overpressure of the room. */
const ductSteps: readonly Step[] = [
  step('v', '4 * flow / (pi * bore^2)', { says: 'mean speed', unit: speeds }),
  step('Re', 'v * bore / viscosity', { says: 'Reynolds number' }),
  frictionFactor({ Re: 'Re', roughness: 'roughness', bore: 'bore' }),
  look('zeta_in', entranceLoss, { row: 'entrance', says: 'entrance', symbol: 'zeta_e' }),
  look('zeta_b', bendLoss, { row: 'bend', says: 'one bend' }),
  look('zeta_out', outletLoss, { row: 'outlet', says: 'outlet', symbol: 'zeta_o' }),
  step('zeta', 'zeta_in + bends * zeta_b + zeta_out + other', { says: 'all losses of fittings' }),
  step('p_v', 'density * v^2 / 2', { says: 'velocity pressure', unit: airPressure }),
  step('dp_d', '(f_d * run / bore + zeta) * p_v', {
    says: 'loss of the duct',
    symbol: 'Delta_p_d',
    unit: airPressure,
    source: darcy,
  }),
  when(
    { choice: 'side', is: ['exhaust'] },
    {
      yes: [lossOf('p_x', 'dp_d', 'its part in the overpressure: it lies behind the room', 'p_x')],
      no: [lossOf('p_x', '0 Pa', 'its part in the overpressure: it lies before the room', 'p_x')],
    },
  ),
]

/** Loss of the whole way, the work of the blower, and whether motor and crank can do it. */
export const ductLossSteps: readonly Step[] = [
  each('ducts', ductSteps),
  lossOf('dp_ducts', 'sum(ducts.dp_d)', 'loss of all ducts', 'Delta_p_s'),
  lossOf('dp_f', 'filter_loss * (flow / filter_flow)^filter_exponent', 'loss of the filters at this flow', 'Delta_p_f'),
  lossOf('dp_all', 'dp_ducts + dp_f + valve', 'pressure that the blower must give', 'Delta_p_b'),
  lossOf('p_room', 'sum(ducts.p_x) + valve', 'overpressure of the room', 'p_o'),
  step('P_air', 'flow * dp_all', { says: 'power in the air', symbol: 'P_a', unit: watts, source: darcy }),
  step('P_shaft', 'P_air / blower_efficiency', {
    says: 'power at the shaft of the blower',
    symbol: 'P_b',
    unit: watts,
  }),
  step('P_el', 'P_shaft / motor_efficiency', { says: 'power from the battery', symbol: 'P_e', unit: watts }),
  step('I_el', 'P_el / voltage', { says: 'current from the battery', symbol: 'I_e', unit: { SI: 'A', US: 'A' } }),
  step('P_hand', 'P_shaft / (crank_efficiency * crankers)', {
    says: 'power that each who cranks must give',
    symbol: 'P_h',
    unit: { SI: 'W/person', US: 'W/person' },
  }),
  check('crank', 'P_hand <= crank_power', { says: 'people can keep up the hand drive in turns' }),
  check('room_pressure', 'p_room >= overpressure', { says: 'the room keeps the overpressure wanted' }),
  when(
    { given: 'blower_pressure' },
    { yes: [check('blower', 'blower_pressure >= dp_all', { says: 'the blower gives the pressure at this flow' })] },
  ),
]
