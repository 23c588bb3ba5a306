import type { Method } from '../method.ts'
import { percentAbove } from '../percent-above.ts'
import { type Slip, slipOf } from './slip-circle.ts'
import { begins, closer, leastOfNet, places } from './slip-net.ts'
import { slopeOf, slopeTakes } from './slip-numbers.ts'
import { ordinaryFactor, slipFactor } from './slip-slices.ts'

const thin = 200

/** The circle of the working in thin slices, by Bishop and by the ordinary method; and the worst circle of another search. */
export const otherCircles: Method = {
  id: 'other-circles',
  title: 'Thin slices, and a net of centres',
  says: `The circle of the working again in ${thin} slices. Then, to look for a worse one, a net of ${places} places across and up for the centre, with ${places} radii each, laid ${closer} times closer round its best ${begins} circles.`,
  takes: { ...slopeTakes, x: 'length', y: 'length', radius: 'length', out: 'length', into: 'length' },
  run: numbers => {
    const slope = slopeOf(numbers)
    const [x, y, radius, out, into] = ['x', 'y', 'radius', 'out', 'into'].map(name => Number(numbers[name])) as [
      number,
      number,
      number,
      number,
      number,
    ]
    const slip: Slip | undefined = slipOf({ x, y, radius, out, into })
    const fine = slip && slipFactor(slope, slip, thin)
    const half = slip && slipFactor(slope, slip, thin / 2)
    if (!slip || !fine || !half) return { ok: false, says: 'the circle of the working is no slip in thin slices' }
    const least = leastOfNet(slope)
    if (!Number.isFinite(least)) return { ok: false, says: 'the net of centres has no circle' }
    return {
      ok: true,
      values: { thin: fine.factor, least, ordinary: ordinaryFactor(slope, slip, fine) },
      verified: `half as many slices change the factor by less than ${percentAbove(Math.abs(half.factor / fine.factor - 1), 2)} %`,
    }
  },
}
