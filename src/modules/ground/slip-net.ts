import { groundAt, type Slip, type Slope, slipOf } from './slip-circle.ts'
import { searchedFactor } from './slip-slices.ts'

/** Places of the first net along each axis, and of the closer ones; how many of its best it begins from, and how often it is laid closer. */
export const places = 15
const closePlaces = 8
export const begins = 5
export const closer = 6
const netSlices = 30

/** A place of the net, each from 0 to 1: the centre across and up, and the radius from one that just touches the ground to the largest. */
type At = readonly [across: number, up: number, radius: number]
interface Best {
  readonly at: At
  readonly factor: number
}

/** The least factor on a net of centres and radii, laid again and closer round its best circles; by other circles than `worstSlip`. */
export function leastOfNet(slope: Slope): number {
  const first = bestByHeight(slope, { middle: [0.5, 0.5, 0.5], half: 0.5, count: places })
  return Math.min(...first.slice(0, begins).map(best => closedIn(slope, best)))
}

function closedIn(slope: Slope, start: Best): number {
  let best = start
  for (let round = 1; round <= closer; round += 1) {
    const [next] = bestByHeight(slope, { middle: best.at, half: 0.5 / 2.5 ** round, count: closePlaces })
    if (next && next.factor < best.factor) best = next
  }
  return best.factor
}

/** The best circle for each height of the centre, best first. */
function bestByHeight(slope: Slope, net: { middle: At; half: number; count: number }): readonly Best[] {
  const [acrosses, ups, radii] = net.middle.map(middle => spread({ ...net, middle })) as [number[], number[], number[]]
  return ups
    .flatMap(up => {
      let best: Best | undefined
      for (const across of acrosses)
        for (const radius of radii) {
          const slip = slipAt(slope, [across, up, radius])
          const factor = slip && searchedFactor(slope, slip, netSlices)?.factor
          if (factor !== undefined && factor < (best?.factor ?? Number.POSITIVE_INFINITY))
            best = { at: [across, up, radius], factor }
        }
      return best ? [best] : []
    })
    .sort((a, b) => a.factor - b.factor)
}

const spread = ({ middle, half, count }: { middle: number; half: number; count: number }): number[] =>
  Array.from({ length: count }, (_, i) => Math.min(Math.max(middle - half + (2 * half * i) / (count - 1), 0), 1))

/** Heights of the centre rise by equal ratios; across, it stands before or behind the middle of the face by as much as it stands high. */
function slipAt(slope: Slope, [across, up, size]: At): Slip | undefined {
  const { height, hard, rise, crest } = slope
  const y = 0.1 * height * (300 * (1 + hard / height)) ** up
  const x = crest / 2 + (y + height) * (across * (1 + Math.max(rise, 1)) - Math.max(rise, 1))
  const touches = reach(slope, x, y)
  if (touches === undefined) return undefined
  // From a centre before the foot the arc ends at the foot before it is deepest.
  const most = Math.max(y + hard, x < 0 ? Math.hypot(x, y) : 0)
  return slipAbout(slope, { x, y, radius: touches + size ** 2 * (most - touches) })
}

/** Distance from a centre to the ground; nothing for one that stands in it. */
function reach(slope: Slope, x: number, y: number): number | undefined {
  const { height, rise, crest } = slope
  if (y <= groundAt(slope, x)) return undefined
  const along = Math.min(Math.max((x + y * rise) / (1 + rise ** 2), 0), crest)
  const behind = Math.hypot(Math.max(crest - x, 0), y - height)
  return Math.min(Math.hypot(Math.max(x, 0), y), Math.hypot(x - along, y - rise * along), behind)
}

/** The arc of a circle below the ground; nothing where it does not both leave and enter it. */
function slipAbout(slope: Slope, circle: { x: number; y: number; radius: number }): Slip | undefined {
  const { x, y, radius } = circle
  const { rise, crest, height, crack } = slope
  const half = (level: number): number => Math.sqrt(radius ** 2 - (y - level) ** 2)
  // Where the circle crosses the plane of the face.
  const [a, b] = [1 + rise ** 2, x + rise * y]
  const root = Math.sqrt(b ** 2 - a * (x ** 2 + y ** 2 - radius ** 2))
  const out = Math.hypot(x, y) < radius ? x - half(0) : (b - root) / a
  const behind = x + half(height - crack)
  const into = behind >= crest ? behind : crack > 0 ? Number.NaN : (b + root) / a
  if (!(out < into && out < crest && into > 0) || (out < 0 && radius > y + slope.hard)) return undefined
  return groundAt(slope, into) - crack > y ? undefined : slipOf({ ...circle, out, into })
}
