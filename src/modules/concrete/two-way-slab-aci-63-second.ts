import type { Second } from '../module.ts'
import { step, when } from '../words.ts'
import { continuous } from './panel-edges.ts'
import { type Direction, directions, plateSteps, stripTotal } from './two-way-slab-plate-steps.ts'

const nearlySquare = { formula: 'm_s >= 0.8' }
const [short, long] = directions as readonly [Direction, Direction]

/** The panel as an elastic plate with its true edges, the whole load everywhere. */
export const twoWaySlabAci63Second: Second = {
  title: 'The elastic plate',
  says: 'The panel is solved as an elastic plate with its true edges under the whole load. The method gives less hogging and, since live load may stand on single panels, more sagging; what redistribution cannot change is the sagging and mean end moment of a strip together.',
  steps: [
    step('r', 'long_span / short_span', { says: 'ratio of the spans' }),
    ...plateSteps,
    stripTotal(short),
    when(nearlySquare, { says: 'the panel is nearly square', yes: [stripTotal(long)] }),
  ],
  compare: [
    {
      first: 'M_x_strip',
      second: 'M_x_strip_el',
      band: 0.3,
      says: 'the method counts live load on single panels; the plate has it everywhere',
      when: continuous('long', [1, 2]),
    },
    {
      first: 'M_x_strip',
      second: 'M_x_strip_el',
      band: 0.42,
      says: 'no long edge is continuous: live load on single panels weighs more',
      when: continuous('long', [0]),
    },
    {
      first: 'M_y_strip',
      second: 'M_y_strip_el',
      band: 0.47,
      says: 'live load on single panels weighs most where no short edge is continuous, else up to 25 %',
      when: nearlySquare,
    },
  ],
}
