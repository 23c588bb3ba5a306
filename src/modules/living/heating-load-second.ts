import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'
import { lengths } from './living-units.ts'

/** The shape factor by the closed form of a compact body and its mirror image. */
export const heatingLoadSecond: Second = {
  title: 'Compact body and its mirror image',
  says: 'The shape factor from the published value of a box deep in the ground, and the form of the sphere for how near the surface is. It finds a slip in the panels, not in gains or temperatures. It stands high for a box near the surface.',
  when: {
    condition: { formula: '0.95 * sqrt(4 * pi * A_b) <= 0.6 * 8 * pi * (cover + height / 2)' },
    otherwise: 'the box is too near the surface for its size: the closed form of a compact body does not hold',
  },
  steps: [
    step('z_g', 'cover + height / 2', { says: 'depth of the middle of the box', unit: lengths }),
    step('S_inf', '0.95 * sqrt(4 * pi * A_b)', {
      says: 'shape factor of the box in ground without a surface',
      unit: lengths,
      source: cite('incropera'),
    }),
    step('S_m', 'S_inf / (1 - S_inf / (8 * pi * z_g))', {
      says: 'shape factor with the surface, by the form of the sphere',
      unit: lengths,
      source: cite('incropera'),
    }),
  ],
  compare: [{ first: 'S_b', second: 'S_m', band: 0.18, says: 'near the surface the closed form stands high' }],
}
