import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step, when } from '../words.ts'
import { groundSection } from './heat-balance-second.ts'
import { lengths } from './living-units.ts'

const compact = { formula: 'S_inf <= 0.6 * 8 * pi * z_g' }
const flat = { formula: 'S_inf > 0.6 * 8 * pi * z_g' }

/** The shape factor of a compact body and its mirror image; of a box near the surface, of a long box with the same faces. */
export const heatingLoadSecond: Second = {
  title: 'Compact body and its mirror image, or a long box of the same faces',
  says: 'A box well down is taken as a compact body, with the form of the sphere for how near the surface is. One near the surface is taken as a long box that has the same roof, floor and walls, and its section is solved. Both find a slip in the panels, not in gains or temperatures.',
  steps: [
    step('z_g', 'cover + height / 2', { says: 'depth of the middle of the box', unit: lengths }),
    step('S_inf', '0.95 * sqrt(4 * pi * A_b)', {
      says: 'shape factor of the box in ground without a surface',
      unit: lengths,
      source: cite('incropera'),
    }),
    when(compact, {
      says: 'the box is so deep for its size that it counts as a compact body',
      yes: [
        step('S_m', 'S_inf / (1 - S_inf / (8 * pi * z_g))', {
          says: 'shape factor with the surface, by the form of the sphere',
          unit: lengths,
          source: cite('incropera'),
        }),
      ],
      no: [
        step('b_c', 'width * box_length / (width + box_length)', {
          says: 'its floor over half its outline: the width of the long box',
          unit: lengths,
          source: cite('iso-13370'),
        }),
        step('l_c', 'width + box_length', { says: 'length of the long box', unit: lengths }),
        solve(groundSection, {
          takes: { width: 'b_c', height: 'height', cover: 'cover', long: 'l_c' },
          gives: {
            shape: {
              dimension: 'length',
              name: 'S_sec',
              says: 'shape factor without corners',
              symbol: 'S_l',
              unit: lengths,
            },
          },
          says: 'conduction through the ground, solved on a grid',
          source: cite('incropera'),
        }),
      ],
    }),
  ],
  compare: [
    {
      first: 'S_b',
      second: 'S_m',
      band: 0.18,
      says: 'the closer to the surface the higher the form stands',
      when: compact,
    },
    {
      first: 'S_b',
      second: 'S_sec',
      band: 0.16,
      says: 'without corners the section stands 5 % to 15 % low',
      when: flat,
    },
  ],
}
