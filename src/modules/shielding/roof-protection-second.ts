import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { each, look, step } from '../words.ts'
import { halvingThickness } from './halving-tables.ts'
import { thin } from './slab-inputs.ts'

/** The halving rule for the same layers. */
export const roofByHalvings: Second = {
  title: 'Halving thicknesses of fallout gamma',
  says: 'The published halving thicknesses of the whole spectrum, without energies, coefficients or a plane. The rule begins at a factor of 1 without any cover, where a plane already falls fast: under cover of common depth it is on the safe side, by two halvings or so, and for steel by more.',
  steps: [
    each('layers', [
      look('x_half', halvingThickness, { row: 'material', column: 'spectrum', says: 'halving thickness', unit: thin }),
      step('n', 'thickness / x_half', { says: 'halvings in this layer' }),
    ]),
    step('n_half', 'sum(layers.n)', { says: 'halvings by the rule', source: cite('halving-data') }),
    step('P_half', '2^n_half', { says: 'protection factor by the rule', source: cite('halving-data') }),
    step('n_kernel', 'log(P) / log(2)', { says: 'halvings that the first method found', symbol: 'n_P' }),
  ],
  compare: [
    {
      first: 'n_kernel',
      second: 'n_half',
      band: 0.5,
      says: 'in halvings, and wide: it shows that no unit, material or thickness is grossly wrong',
      when: { formula: 'n_half >= 5' },
    },
  ],
}
