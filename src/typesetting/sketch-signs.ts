import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Point, Shape } from '../modules/sketch.ts'
import { loadOutline, type Place } from './sketch-frame.ts'
import { along, between, black, head, line, n, path, unit } from './sketch-strokes.ts'
import { around, half, type Ink, inked, marked } from './sketch-wish.ts'

type Of<K extends Shape['kind']> = Extract<Shape, { readonly kind: K }>

/** A level mark: a triangle on a short line, doubled for water. */
export function levelInk(shape: Of<'level'>, place: Place): Ink {
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

/** The surface of the ground with ticks below it. */
export function groundInk(shape: Of<'ground'>, place: Place): Ink {
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

/** A distributed load: its outline and an arrow about every 13 points. */
export function loadInk(shape: Of<'load'>, place: Place): Ink {
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
