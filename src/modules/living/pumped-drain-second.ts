import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'
import { heads } from './living-units.ts'

/** The head lost in the pipe by the formula of Hazen and Williams. */
export const pumpedDrainSecond: Second = {
  title: 'Friction by Hazen and Williams',
  says: 'The head lost in the pipe by the empirical formula of Hazen and Williams in SI units, with a coefficient of its own for the wall. Both depend on how rough the pipe is thought to be.',
  when: {
    condition: { formula: 'bore >= 50 mm and v <= 3 m/s and v >= 0.5 m/s and run > 0 m' },
    otherwise: 'Hazen and Williams holds for water in pipes of 50 mm and more, from about 0.5 to 3 m/s.',
  },
  steps: [
    step('h_w', '(10.67 m) * (run / m) * (pump_flow / (m^3/s))^1.852 / (hazen^1.852 * (bore / m)^4.8704)', {
      says: 'head lost in the pipe',
      unit: heads,
      source: cite('hazen-williams'),
    }),
  ],
  compare: [{ first: 'h_f', second: 'h_w', band: 0.15, says: 'the two formulas weigh speed and bore differently' }],
}
