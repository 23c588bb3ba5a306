import { entry, finite, NumericRefusal } from './numeric-refusal.ts'

/**
 * A distributed load along a line, straight between points: position (m) and intensity (N/m). Two points at one
 * position make a jump; before the first and after the last point there is no load.
 */
export type LineLoad = readonly (readonly [position: number, intensity: number])[]

/** A stretch over which the load is straight: from `start` to `end` (m), intensities at both ends (N/m). */
export type LoadStretch = {
  readonly start: number
  readonly end: number
  readonly atStart: number
  readonly atEnd: number
}

/**
 * The stretches of a load, in order, jumps left out. A position past an end by rounding (1e-9 of the length) is at it.
 * Refuses fewer than two points, positions that go back or leave 0 to `length`, more than two points at one position,
 * and numbers that are not finite.
 */
export function loadStretches(load: LineLoad, length: number): readonly LoadStretch[] {
  if (load.length < 2) throw new NumericRefusal('load', `Expected two points at least in \`load\`, got ${load.length}`)
  const points = load.map(point => snapped(point, length))
  points.forEach((point, i) => {
    checkOrder(point, points[i - 1], points[i - 2])
  })
  return points.slice(1).flatMap(([end, atEnd], i) => {
    const [start, atStart] = points[i] ?? [end, atEnd]
    return end > start ? [{ start, end, atStart, atEnd }] : []
  })
}

type Point = LineLoad[number]

function snapped([position, intensity]: Point, length: number): Point {
  return [placeOnSpan(position, length, 'load'), finite(intensity, 'load')]
}

/** A place from 0 to `length`, one past an end by rounding (1e-9 of the length) put at it; refuses others, naming `input`. */
export function placeOnSpan(place: number, length: number, input: string): number {
  const near = 1e-9 * length
  if (finite(place, input) >= -near && place <= length + near) return Math.min(length, Math.max(0, place))
  throw new NumericRefusal(input, `Expected places from 0 to ${length} for \`${input}\`, got ${place}`)
}

function checkOrder([at]: Point, before: Point | undefined, earlier: Point | undefined): void {
  if (before && at < before[0]) {
    throw new NumericRefusal('load', `Expected positions of \`load\` in order, got ${at} after ${before[0]}`)
  }
  if (at !== earlier?.[0]) return
  throw new NumericRefusal('load', `Expected two points at most at one place of \`load\`, got three at ${at}`)
}

/**
 * Integral over s from `from` to `to` of p(s) (`to` - s)^n / n!, exact: n = 0 gives the load, 1 its moment about `to`,
 * 2 and 3 what slope and deflection need. Only the part of each stretch between the two places counts.
 * Source: a straight load is a + b u with u measured back from the stretch's end; integrals of u^n in closed form.
 */
export function loadMoment(stretches: readonly LoadStretch[], n: 0 | 1 | 2 | 3, range: LoadRange): number {
  const { from, to } = range
  return stretches.reduce((sum, stretch) => {
    const [start, end] = [Math.max(from, stretch.start), Math.min(to, stretch.end)]
    return end > start ? sum + stretchMoment(stretch, n, { start, end, to }) : sum
  }, 0)
}

export type LoadRange = { readonly from: number; readonly to: number }

type Cut = { readonly start: number; readonly end: number; readonly to: number }

// With L = end - start, d = to - end, u from 0 at `end`: the sum over the binomial of (d + u)^n (q + (p - q) u/L).
function stretchMoment(stretch: LoadStretch, n: number, { start, end, to }: Cut): number {
  const [p, q] = [intensityWithin(stretch, start), intensityWithin(stretch, end)]
  const [length, away] = [end - start, to - end]
  let sum = 0
  for (let k = 0; k <= n; k++) {
    const power = length ** (k + 1) * away ** (n - k)
    sum += entry(binomial, (n * (n + 1)) / 2 + k) * power * (q / (k + 1) + (p - q) / (k + 2))
  }
  return sum / entry(factorial, n)
}

const binomial = [1, 1, 1, 1, 2, 1, 1, 3, 3, 1]
const factorial = [1, 1, 2, 6]

/** Intensity of a stretch at a place on it. */
export function intensityWithin({ start, end, atStart, atEnd }: LoadStretch, at: number): number {
  return atStart + ((atEnd - atStart) * (at - start)) / (end - start)
}
