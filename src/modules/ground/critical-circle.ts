import type { Method } from '../method.ts'
import { slopeOf, slopeTakes } from './slip-numbers.ts'
import { lastStep, searchSlices, worstSlip } from './slip-search.ts'

/** The circle of the least factor by Bishop's method, and the load on the crest that acts on it. */
export const criticalCircle: Method = {
  id: 'critical-circle',
  title: 'Search for the worst circle',
  says: `Some two thousand circles through two places of the ground, from nearly straight to the deepest above the hard ground; the best five of them are moved in ever smaller steps, down to a thousandth of the height, until none lowers the factor, each in ${searchSlices} slices. A circle does not hang over where it enters; where friction counts, one with an m of less than 0.2 at an end is left out.`,
  takes: slopeTakes,
  run: numbers => {
    const slope = slopeOf(numbers)
    const found = worstSlip(slope)
    if (!found || !(found.factor > 0)) return { ok: false, says: 'no circle has a factor: the ground does not stand' }
    const { slip, factor, load, tried } = found
    return {
      ok: true,
      values: { x: slip.x, y: slip.y, radius: slip.radius, out: slip.out, into: slip.into, load: load * slope.load },
      verified: `of ${tried} circles none has less than ${factor.toFixed(4)}, nor has one that is moved by ${lastStep} of the height`,
    }
  },
}
