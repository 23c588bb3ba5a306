import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step } from '../words.ts'
import { thin } from './living-units.ts'
import { plateBySeries } from './plate-series.ts'

/** Thickness and bending of the leaf by the double series instead of the table. */
export const airLockDoorSecond: Second = {
  title: 'The plate by its double series',
  says: 'Stress and bending of the leaf at its own ratio of sides by the series of Navier: no table and nothing read between its lines, which lie up to 2.5 % low between printed ratios. It does not look at the force on the handle or the leak.',
  steps: [
    solve(plateBySeries, {
      takes: { width: 'width', height: 'height' },
      gives: {
        stress: { dimension: 'ratio', name: 'beta_n', says: 'stress factor' },
        bending: { dimension: 'ratio', name: 'alpha_n', says: 'bending factor' },
      },
      says: 'factors of the plate by the double series',
      source: cite('timoshenko', 'article 30'),
    }),
    step('t_n', 'b_d * sqrt(beta_n * design_pressure / f_a)', {
      says: 'thickness needed for the stress',
      symbol: 'd_ser',
      unit: thin,
    }),
    step('w_n', 'alpha_n * design_pressure * b_d^4 / (modulus * thickness^3)', {
      says: 'bending of the middle of the leaf',
      unit: thin,
    }),
  ],
  compare: [
    { first: 't_req', second: 't_n', band: 0.015, says: 'the table is read by straight lines between its ratios' },
    { first: 'w_d', second: 'w_n', band: 0.03, says: 'the table is read by straight lines between its ratios' },
  ],
}
