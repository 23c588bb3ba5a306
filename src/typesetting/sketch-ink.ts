import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Label, Point, Shape } from '../modules/sketch.ts'
import { loadOutline, type Place } from './sketch-frame.ts'
import { paint } from './sketch-patterns.ts'
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

const weights = { thin: 0.5, medium: 0.9, thick: 1.5 } as const
const black = '#111'
const half = letterSize * 0.34

export type Drawer = (shape: Shape) => Ink

/** Draws shapes with weights, gaps and heads in points, whatever the scale. */
export function drawer(id: string, place: Place): Drawer {
  return shape => {
    switch (shape.kind) {
      case 'polygon':
        return polygonInk(shape, id, place)
      case 'line':
        return lineInk(shape, place)
      case 'arrow':
        return arrowInk(shape, place)
      case 'dimension':
        return dimensionInk(shape, place)
      case 'label':
        return labelInk(shape, place)
      case 'level':
        return levelInk(shape, place)
      case 'ground':
        return groundInk(shape, place)
      case 'load':
        return loadInk(shape, place)
    }
  }
}

type Of<K extends Shape['kind']> = Extract<Shape, { readonly kind: K }>

function polygonInk(shape: Of<'polygon'>, id: string, place: Place): Ink {
  const points = shape.points.map(place)
  const outline = { stroke: black, strokeWidth: shape.fill === 'pressure' ? 0.6 : 0.9, strokeLinejoin: 'miter' }
  const dashes = shape.dashed ? { strokeDasharray: '3 2' } : {}
  const stroke = shape.fill === 'water' || shape.fill === 'soil' ? { stroke: 'none' } : {}
  const fill = paint(id, shape.fill)
  return inked([s('path', { d: `${path(points)}Z`, fill, ...outline, ...stroke, ...dashes })], closed(points))
}

const closed = (points: readonly Point[]): readonly Point[] => (points[0] ? [...points, points[0]] : points)

function lineInk(shape: Of<'line'>, place: Place): Ink {
  const points = shape.points.map(place)
  return inked([line(points, weights[shape.weight], shape.dashed)], points)
}

function arrowInk(shape: Of<'arrow'>, place: Place): Ink {
  const from = place(shape.from)
  const to = place(shape.to)
  const away = unit(to, from)
  const spots = [...around(from, away, 4), ...aside(from, to)]
  const ink = inked([line([from, along(to, away, 3)], 0.7), head(from, to, 5)], [from, to], shape.label, spots)
  // A label hides an arrow worse than an outline.
  return { ...ink, edges: [...ink.edges, ...ink.edges] }
}

function dimensionInk(shape: Of<'dimension'>, place: Place): Ink {
  const from = place(shape.from)
  const to = place(shape.to)
  const way = unit(from, to)
  // to the left of from->to in the world, where y runs up, is this way on paper, where y runs down
  const side: Point = [way[1], -way[0]]
  const sign = shape.off < 0 ? -1 : 1
  const a = along(from, side, shape.off)
  const b = along(to, side, shape.off)
  const strokes = [
    line([a, b], 0.45),
    ...[[from, a] as const, [to, b] as const].map(([p, q]) =>
      line([along(p, side, sign * Math.min(2, Math.abs(shape.off) / 2)), along(q, side, sign * 2.5)], 0.35),
    ),
    slash(a, way),
    slash(b, way),
  ]
  const outward: Point = [side[0] * sign, side[1] * sign]
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
  const spots = [...around(middle, outward, 4), ...around(middle, [-outward[0], -outward[1]], 4)]
  const ink = inked(strokes, [a, b], shape.label, spots)
  return Math.abs(outward[0]) > Math.abs(outward[1]) ? marked(ink, along(middle, outward, 1)) : ink
}

function labelInk(shape: Of<'label'>, place: Place): Ink {
  const [x, y] = place(shape.at)
  const anchors = [shape.anchor, 'middle', shape.anchor === 'end' ? 'start' : 'end'] as const
  const spots = anchors.flatMap(anchor => [0, -10, 10, -19, 19].map(dy => ({ x, y: y + half + dy, anchor })))
  return inked([], [], shape.label, spots)
}

function levelInk(shape: Of<'level'>, place: Place): Ink {
  const [x, y] = place(shape.at)
  const sign = shape.side === 'left' ? -1 : 1
  const tip = x + sign * 7
  const strokes = [
    line(
      [
        [x - sign * 2, y],
        [x + sign * 16, y],
      ],
      0.5,
    ),
    s('path', {
      d: `${path([
        [tip, y],
        [tip - 3, y - 5],
        [tip + 3, y - 5],
      ])}Z`,
      fill: '#fff',
      stroke: black,
      strokeWidth: 0.6,
    }),
    ...(shape.water
      ? [
          line(
            [
              [tip - 4, y + 1.8],
              [tip + 4, y + 1.8],
            ],
            0.5,
          ),
          line(
            [
              [tip - 2, y + 3.6],
              [tip + 2, y + 3.6],
            ],
            0.5,
          ),
        ]
      : []),
  ]
  const anchor = sign < 0 ? 'end' : 'start'
  const beside = { x: x + sign * 19, y: y + half, anchor } as const
  const spots = [0, -5, 5, -10, 10, -15, 15, -20, 20].map(dy => ({ ...beside, y: beside.y + dy }))
  const reach: readonly Point[] = [
    [x, y - 5],
    [x + sign * 16, y + 4],
  ]
  return marked(inked(strokes, reach, shape.label, spots), [x + sign * 16, y])
}

function groundInk(shape: Of<'ground'>, place: Place): Ink {
  const points = shape.points.map(place)
  const ticks = points.slice(1).flatMap((to, index) => groundTicks(points[index] ?? to, to))
  return inked(
    [line(points, 1), s('path', { d: ticks.join(''), fill: 'none', stroke: black, strokeWidth: 0.45 })],
    points,
  )
}

function groundTicks(from: Point, to: Point): string[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const way = unit(from, to)
  const count = Math.floor((length - 2) / 3)
  return Array.from({ length: Math.max(0, count) }, (_, index) => index)
    .filter(index => index % 6 < 3)
    .map(index => along(from, way, 4 + index * 3))
    .map(([x, y]) => `M${n(x)} ${n(y)}l-3.4 3.4`)
}

function loadInk(shape: Of<'load'>, place: Place): Ink {
  const [a, b, outerB, outerA] = loadOutline(shape).map(place) as [Point, Point, Point, Point]
  const count = Math.max(1, Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]) / 13))
  const shares = Array.from({ length: count + 1 }, (_, index) => index / count)
  const arrows = shares.flatMap(t => loadArrow(between(outerA, outerB, t), between(a, b, t)))
  const middle = between(outerA, outerB, 0.5)
  const away = unit(between(a, b, 0.5), middle)
  const strokes = [line([a, outerA, outerB, b], 0.6), ...arrows]
  return inked(strokes, [a, b, outerB, outerA], shape.label, around(middle, away, 4))
}

function loadArrow(from: Point, to: Point): Element[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  if (length < 4.5) return []
  return [line([from, along(to, unit(to, from), 3)], 0.5), head(from, to, 4)]
}

/** Places on both sides of an arrow's middle. */
function aside(from: Point, to: Point): Spot[] {
  const middle = between(from, to, 0.5)
  const [ux, uy] = unit(from, to)
  return [...around(middle, [uy, -ux], 4), ...around(middle, [-uy, ux], 4)]
}

/** Places for a label outside a point, in the order they are tried. */
function around([x, y]: Point, [ax, ay]: Point, gap: number): Spot[] {
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

function inked(strokes: readonly Element[], reach: readonly Point[], label?: Label, spots: readonly Spot[] = []): Ink {
  const edges = reach.slice(1).map((to, index): readonly [Point, Point] => [reach[index] ?? to, to])
  return { strokes, reach, edges, wishes: label ? [{ label, spots }] : [] }
}

const marked = (ink: Ink, mark: Point): Ink => ({ ...ink, wishes: ink.wishes.map(wish => ({ ...wish, mark })) })

/** A leader from a mark to its label. */
export const leaderInk = (points: readonly [Point, Point]): Element =>
  s('path.leader', { d: path(points), fill: 'none', stroke: black, strokeWidth: 0.35 })

function line(points: readonly Point[], width: number, dashed?: true): Element {
  const dashes = dashed ? { strokeDasharray: '4 2.4' } : {}
  return s('path', { d: path(points), fill: 'none', stroke: black, strokeWidth: width, ...dashes })
}

function head(from: Point, to: Point, length: number): Element {
  const [ux, uy] = unit(to, from)
  const base: Point = [to[0] + ux * length, to[1] + uy * length]
  const wing = length * 0.3
  const points: Point[] = [to, [base[0] - uy * wing, base[1] + ux * wing], [base[0] + uy * wing, base[1] - ux * wing]]
  return s('path', { d: `${path(points)}Z`, fill: black })
}

function slash([x, y]: Point, [ux, uy]: Point): Element {
  const [dx, dy] = [(ux - uy) * 1.9, (uy + ux) * 1.9]
  return line(
    [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ],
    0.9,
  )
}

function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  return length < 1e-9 ? [0, -1] : [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
}

const along = ([x, y]: Point, [ux, uy]: Point, by: number): Point => [x + ux * by, y + uy * by]
const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]
const n = (value: number): string => String(Math.round(value * 100) / 100)

function path(points: readonly Point[]): string {
  return points.map(([x, y], index) => `${index ? 'L' : 'M'}${n(x)} ${n(y)}`).join('')
}
