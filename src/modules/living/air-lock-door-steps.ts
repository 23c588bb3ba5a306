import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { airPressure, areas, flowRate, forces, lengths, stresses, thin } from './living-units.ts'
import { plateBending, plateStress } from './plate-factors.ts'

const roark = cite('roark', 'Table 11.4, case 1a')

const leaf: readonly Step[] = [
  step('b_d', 'min(width, height)', { says: 'short side of the leaf', unit: lengths }),
  step('k_s', 'min(max(width, height) / b_d, 5)', { says: 'long side over short side, 5 as for a strip' }),
  look('beta', plateStress, { row: 'k_s', says: 'stress factor' }),
  look('alpha', plateBending, { row: 'k_s', says: 'bending factor' }),
  step('f_a', 'strength / factor', { says: 'stress that is allowed', unit: stresses }),
  step('t_req', 'b_d * sqrt(beta * design_pressure / f_a)', {
    says: 'thickness needed for the stress',
    symbol: 'd_r',
    unit: thin,
    source: roark,
  }),
  step('w_d', 'alpha * design_pressure * b_d^4 / (modulus * thickness^3)', {
    says: 'bending of the middle of the leaf',
    unit: thin,
    source: roark,
  }),
  check('strong', 'thickness >= t_req', { says: 'the leaf is thick enough for the pressure' }),
  check('stiff', 'w_d <= bending_limit', { says: 'the leaf stays in its seal' }),
]

const opening: readonly Step[] = [
  step('A_d', 'width * height', { says: 'area of the leaf', unit: areas }),
  step('F_p', 'width * A_d * difference / (2 * (width - handle))', {
    says: 'force of the pressure at the handle',
    unit: forces,
    source: cite('ibc', 'Equation 9-1'),
  }),
  when(
    { choice: 'opens', is: ['against the pressure'] },
    {
      yes: [
        step('F_open', 'closer + F_p', {
          says: 'force to open the door',
          symbol: 'F_o',
          unit: forces,
          source: cite('ibc', 'Equation 9-1'),
        }),
      ],
      no: [
        step('F_open', 'max(closer - F_p, 0 N)', {
          says: 'force to open the door: the pressure helps',
          symbol: 'F_o',
          unit: forces,
          source: cite('statics'),
        }),
        step('F_latch', 'F_p', {
          says: 'force that the latch holds, and with which it flies open',
          symbol: 'F_l',
          unit: forces,
        }),
        check('held', 'F_latch <= force_limit', { says: 'a person can hold the door against flying open' }),
      ],
    },
  ),
  step('dp_max', '(force_limit - closer) * 2 * (width - handle) / (width * A_d)', {
    says: 'pressure difference against which it can just be opened',
    symbol: 'Delta_p_o',
    unit: airPressure,
    source: cite('ibc', 'Equation 9-1'),
  }),
  check('can_open', 'F_open <= force_limit', { says: 'a person can open the door' }),
]

const leak: readonly Step[] = [
  step('A_g', '2 * (width + height) * gap', {
    says: 'area of the gap',
    symbol: 'A_k',
    unit: { SI: 'm^2', US: 'in^2' },
  }),
  step('Q_leak', 'discharge * A_g * sqrt(2 * difference / density)', {
    says: 'air that leaks past the leaf',
    symbol: 'Q_k',
    unit: flowRate,
    source: cite('smoke-manual', 'orifice'),
  }),
  check('tight', 'Q_leak <= leak_limit', { says: 'the leak is within what is allowed' }),
]

/** The leaf under pressure, the force to open it, and the leak round it. */
export const airLockDoorSteps: readonly Step[] = [...leaf, ...opening, ...leak]
