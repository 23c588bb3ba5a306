import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Point } from '../modules/sketch.ts'

export const black = '#111'

/** A leader from a mark to its label. */
export const leaderInk = (points: readonly [Point, Point]): Element =>
  s('path.leader', { d: path(points), fill: 'none', stroke: black, strokeWidth: 0.35 })

/** A line through points, in points of paper. */
export function line(points: readonly Point[], width: number, dashed?: true): Element {
  const dashes = dashed ? { strokeDasharray: '4 2.4' } : {}
  return s('path', { d: path(points), fill: 'none', stroke: black, strokeWidth: width, ...dashes })
}

/** The head of an arrow, its tip at `to`. */
export function head(from: Point, to: Point, length: number): Element {
  const [ux, uy] = unit(to, from)
  const base: Point = [to[0] + ux * length, to[1] + uy * length]
  const wing = length * 0.3
  const points: Point[] = [to, [base[0] - uy * wing, base[1] + ux * wing], [base[0] + uy * wing, base[1] - ux * wing]]
  return s('path', { d: `${path(points)}Z`, fill: black })
}

/** The slash at the end of a dimension line. */
export function slash([x, y]: Point, [ux, uy]: Point): Element {
  const [dx, dy] = [(ux - uy) * 1.9, (uy + ux) * 1.9]
  return line(
    [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ],
    0.9,
  )
}

/** The direction from one point to another, of length 1; upwards where they are one. */
export function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  return length < 1e-9 ? [0, -1] : [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
}

/** A point moved in a direction. */
export const along = ([x, y]: Point, [ux, uy]: Point, by: number): Point => [x + ux * by, y + uy * by]
/** The point at a share of the way from one to another. */
export const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]
/** A number of a path, to a hundredth of a point. */
export const n = (value: number): string => String(Math.round(value * 100) / 100)

/** Points as the `d` of a path, left open. */
export function path(points: readonly Point[]): string {
  return points.map(([x, y], index) => `${index ? 'L' : 'M'}${n(x)} ${n(y)}`).join('')
}
