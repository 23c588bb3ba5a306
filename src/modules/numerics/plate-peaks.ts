import { entry } from './numeric-refusal.ts'
import type { PlateAxis } from './plate-axis.ts'
import type { PlateField } from './plate-field.ts'
import { clearOfCorners, type Part, type Place } from './plate-places.ts'
import { type PlateState, plateReader, plateStates } from './plate-state.ts'

/** A greatest value and its place, `x` and `y` as shares of the sides. */
export type Peak = Place & { readonly value: number }

/** What is sought at a place: the search goes to the greatest. */
export type Measure = (state: PlateState) => number

/** The state at each of a grid of places. */
export type PlateSample = Place & { readonly state: PlateState }

const cells = 24

/** States on a grid of 25 shares of each side of a part, of its first half where a mirror makes the other the same; a point gives one share. */
export function plateSamples(field: PlateField, part: Part): readonly PlateSample[] {
  const [xs, ys] = [unlike(field.x, shares(part.x)), unlike(field.y, shares(part.y))]
  return plateStates(field, xs, ys).flatMap((line, i) =>
    line.map((state, j) => ({ x: entry(xs, i), y: entry(ys, j), state })),
  )
}

/** The shares this side of a mirror, if any; those beyond it only repeat them. */
function unlike({ ends }: PlateAxis, all: readonly number[]): readonly number[] {
  const [first = 0] = all
  if (ends[1] !== 'mirror' || first > 0.5) return all
  return all.filter(share => share < 0.5 + 1e-9)
}

function shares([from, to]: readonly [number, number]): readonly number[] {
  if (from === to) return [from]
  return Array.from({ length: cells + 1 }, (_, i) => from + ((to - from) * i) / cells)
}

/**
 * Greatest value of `measure` in a part of the panel and its place to about 1/500 of a side: the best of `samples`, then
 * parabolas along x and y. Places near a corner between a fixed and a free edge do not count.
 */
export function platePeak(
  field: PlateField,
  measure: Measure,
  { part, samples }: { readonly part: Part; readonly samples: readonly PlateSample[] },
): Peak {
  const found = samples
    .filter(place => clearOfCorners(field.panel, place))
    .map(({ x, y, state }): Peak => ({ value: measure(state), x, y }))
    .reduce(greater)
  const read = plateReader(field)
  const at = ({ x, y }: Place) => ({ value: measure(read(x, y)), x, y })
  const tryLine = (best: Peak, line: Line) => {
    if (line.step === 0) return best
    return onParabola(best, line, at)
      .filter(place => clearOfCorners(field.panel, place))
      .reduce(greater, best)
  }
  return [1, 12].reduce((best, finer) => settle(best, next => axesOf(part, finer).reduce(tryLine, next)), found)
}

// A ridge askew to the axes takes several turns of both.
function settle(start: Peak, turn: (best: Peak) => Peak): Peak {
  let best = start
  for (let pass = 0; pass < 6; pass++) {
    const next = turn(best)
    const settled = next.value - best.value <= 1e-6 * Math.abs(next.value)
    best = next
    if (settled) break
  }
  return best
}

function axesOf(part: Part, finer: number): readonly Line[] {
  return (['x', 'y'] as const).map(axis => {
    const [from, to] = part[axis]
    return { axis, from, to, step: (to - from) / (cells * finer) }
  })
}

type Line = { readonly axis: 'x' | 'y'; readonly from: number; readonly to: number; readonly step: number }

// A neighbour each side of the best, and the top of the parabola through the three.
function onParabola(best: Peak, { axis, from, to, step }: Line, at: (place: Place) => Peak): readonly Peak[] {
  const middle = Math.min(to - step, Math.max(from + step, best[axis]))
  const along = (share: number) => at({ ...best, [axis]: Math.min(to, Math.max(from, share)) })
  const three = [along(middle - step), along(middle), along(middle + step)] as const
  const bend = three[0].value - 2 * three[1].value + three[2].value
  if (!(bend < 0)) return three
  const top = middle + (step * (three[0].value - three[2].value)) / (2 * bend)
  return Math.abs(top - middle) <= step ? [...three, along(top)] : three
}

// A tie within rounding keeps the earlier place, so that the place does not hang on noise.
function greater(old: Peak, next: Peak): Peak {
  return next.value - old.value > 1e-8 * Math.abs(next.value) ? next : old
}
