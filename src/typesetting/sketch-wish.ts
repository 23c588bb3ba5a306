import type { Element } from 'hast'
import type { Label, Point } from '../modules/sketch.ts'
import { between, unit } from './sketch-strokes.ts'
import { letterSize } from './sketch-text.ts'

/** Where a label may stand: the first free place of the list is taken. */
export interface Spot {
  readonly x: number
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
}

/** What one shape puts on the paper: strokes, the points they reach, and the labels it wishes for. */
export interface Ink {
  readonly strokes: readonly Element[]
  readonly reach: readonly Point[]
  /** The lines that a label had better not stand on. */
  readonly edges: readonly (readonly [Point, Point])[]
  readonly wishes: readonly Wish[]
}

/** A label with the places it may stand at; one beside a mark on an upright line has the point that a leader would begin at. */
export interface Wish {
  readonly label: Label
  readonly spots: readonly Spot[]
  readonly mark?: Point
}

/** From the middle of a letter down to the line it stands on. */
export const half = letterSize * 0.34

/** Places on both sides of an arrow's middle. */
export function aside(from: Point, to: Point): Spot[] {
  const middle = between(from, to, 0.5)
  const [ux, uy] = unit(from, to)
  return [...around(middle, [uy, -ux], 4), ...around(middle, [-uy, ux], 4)]
}

/** Places for a label outside a point, in the order they are tried. */
export function around([x, y]: Point, [ax, ay]: Point, gap: number): Spot[] {
  const level = y + half
  if (Math.abs(ax) > Math.abs(ay)) {
    const anchor = ax < 0 ? 'end' : 'start'
    return [0, -5, 5, -10, 10, -16, 16].map(dy => ({ x: x + Math.sign(ax) * gap, y: level + dy, anchor }))
  }
  const stood = ay < 0 ? y - gap : y + gap + 2 * half
  const further = ay < 0 ? stood - 10 : stood + 10
  return [
    { x, y: stood, anchor: 'middle' },
    { x: x + 3, y: stood, anchor: 'start' },
    { x: x - 3, y: stood, anchor: 'end' },
    { x, y: further, anchor: 'middle' },
    { x: x + 3, y: further, anchor: 'start' },
    { x: x - 3, y: further, anchor: 'end' },
  ]
}

/** Ink with the lines between the points it reaches as edges, and one label where there is one. */
export function inked(
  strokes: readonly Element[],
  reach: readonly Point[],
  label?: Label,
  spots: readonly Spot[] = [],
): Ink {
  const edges = reach.slice(1).map((to, index): readonly [Point, Point] => [reach[index] ?? to, to])
  return { strokes, reach, edges, wishes: label ? [{ label, spots }] : [] }
}

/** The same, its labels beside a mark. */
export const marked = (ink: Ink, mark: Point): Ink => ({ ...ink, wishes: ink.wishes.map(wish => ({ ...wish, mark })) })
