import { type Slip, type Slope, slipThrough } from './slip-circle.ts'
import { searchedFactor } from './slip-slices.ts'

/** Slices of an arc in the net, and when the best are followed. */
export const netSlices = 12
export const searchSlices = 40
/** Shares of the deepest arc that are tried between two places of the ground. */
const shares = [1, 0.85, 0.7, 0.55, 0.42, 0.3, 0.2, 0.12, 0.06, 0.03]
const starts = 5
/** Smallest step of the last places, a part of the height. */
export const lastStep = 0.001

const mostMoves = 400

type Try = readonly [out: number, into: number, share: number]
interface Tried {
  readonly at: Try
  readonly factor: number
}

/** The worst circle found, its factor in so many slices, and how many circles were tried. */
export interface Found {
  readonly slip: Slip
  readonly factor: number
  readonly load: 0 | 1
  readonly tried: number
}

/** A net of circles through two places of the ground, then the best five moved in ever smaller steps until none lowers the factor. */
export function worstSlip(slope: Slope): Found | undefined {
  let tried = 0
  const far = 2 * (slope.height + slope.hard)
  const factorIn =
    (count: number) =>
    ([out, into, share]: Try): number => {
      if (share <= 0 || share > 1 || out < -far || into > slope.crest + far) return Number.POSITIVE_INFINITY
      const slip = slipThrough(slope, { out, into, share })
      tried += 1
      return (slip && searchedFactor(slope, slip, count)?.factor) ?? Number.POSITIVE_INFINITY
    }
  const best = netOf(slope, far, factorIn(netSlices))
    .slice(0, starts)
    .map(({ at }) => followed(slope, at, factorIn(searchSlices)))
    .sort((a, b) => a.factor - b.factor)[0]
  if (!best) return undefined
  const [out, into, share] = best.at
  const slip = slipThrough(slope, { out, into, share })
  const found = slip && searchedFactor(slope, slip, searchSlices)
  return slip && found ? { slip, factor: found.factor, load: found.load, tried } : undefined
}

/** The best share for each two places, best places first. */
function netOf(slope: Slope, far: number, factorAt: (at: Try) => number): readonly Tried[] {
  const apart = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => (i / (count - 1)) ** 2)
  const face = [0.25, 0.5, 0.75].map(part => part * slope.crest)
  const outs = [...apart(10).map(part => 0 - far * part), ...face]
  const intos = [...apart(12).map(part => slope.crest + far * part), ...face]
  return outs
    .flatMap(out => intos.map((into): Try => [out, into, 1]))
    .map(([out, into]) =>
      bestOf(
        shares.map((share): Try => [out, into, share]),
        factorAt,
      ),
    )
    .filter(({ factor }) => Number.isFinite(factor))
    .sort((a, b) => a.factor - b.factor)
}

function bestOf(places: readonly Try[], factorAt: (at: Try) => number): Tried {
  let best: Tried = { at: [0, 0, 0], factor: Number.POSITIVE_INFINITY }
  for (const at of places) {
    const factor = factorAt(at)
    if (factor < best.factor) best = { at, factor }
  }
  return best
}

/** Moves one of the three at a time; halves the steps where none lowers the factor. */
function followed({ height }: Slope, start: Try, factorAt: (at: Try) => number): Tried {
  let best: Tried = { at: start, factor: factorAt(start) }
  let step = 0.2
  for (let moves = 0; step >= lastStep && moves < mostMoves; moves += 1) {
    const next = bestOf(neighbours(best.at, { along: step * height, share: 0.4 * step }), factorAt)
    if (next.factor < best.factor * (1 - 1e-6)) best = next
    else step /= 2
  }
  return best
}

function neighbours([out, into, share]: Try, by: { along: number; share: number }): readonly Try[] {
  // No step leaps over the foot of the slope: many a worst circle leaves the ground just there.
  const past = (next: number): number => (next * out < 0 ? 0 : next)
  return [1, -1].flatMap((sign): Try[] => [
    [past(out + sign * by.along), into, share],
    [out, into + sign * by.along, share],
    [out, into, Math.min(share + sign * by.share, 1)],
    [past(out + sign * by.along), into + sign * by.along, share],
    [past(out + sign * by.along), into - sign * by.along, share],
  ])
}
