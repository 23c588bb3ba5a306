import type { Second, Step } from '../module.ts'
import { solve, step, when } from '../words.ts'
import { das, stress } from './cantilever-sheeting-words.ts'
import { lengthUnit, lineMomentUnit } from './ground-units.ts'
import { sheetBalance } from './sheet-balance.ts'

const balanced = (strength: Readonly<Record<string, string>>): Step =>
  solve(sheetBalance, {
    takes: {
      depth: 'depth',
      dry: 'L_1',
      gamma: 'gamma',
      gamma_b: 'gamma_b',
      surcharge: 'surcharge',
      K_a: 'K_a',
      ...strength,
    },
    words: { below: { choice: 'below' } },
    gives: {
      depth: { dimension: 'length', name: 'D_t', says: 'embedment in balance', unit: lengthUnit },
      moment: {
        dimension: 'moment_per_length',
        name: 'M_t',
        says: 'largest moment in the wall',
        unit: lineMomentUnit,
      },
    },
    says: 'embedment and point of turning tried until both balances hold',
  })

/** Embedment and moment again, by trial over slices of net pressure. */
export const cantileverSheetingSecond: Second = {
  title: 'Forces and moments by slices',
  says: 'The same net pressure, from the soil itself in slices; embedment and point of turning are tried until forces and moments balance. No equation of the first method is used.',
  steps: [
    when(
      { choice: 'below', is: ['sand'] },
      {
        yes: [
          step('K_d', 'K_p / passive_factor', { says: 'passive coefficient to reckon with' }),
          balanced({ K_p: 'K_d' }),
        ],
        no: [
          when(
            { given: 'c_below' },
            {
              yes: [
                stress('c_4', '4 * c_below / passive_factor', 'four times the strength to reckon with', das),
                balanced({ resistance: 'c_4' }),
              ],
            },
          ),
        ],
      },
    ),
  ],
  compare: [
    { first: 'D_0', second: 'D_t', band: 0.001, says: 'the same balance, by slices instead of an equation' },
    { first: 'M_max', second: 'M_t', band: 0.001, says: 'the same, summed to the place of no shear' },
  ],
}
