import { s } from 'hastscript'
import type { Point, Shape } from '../modules/sketch.ts'
import type { Place } from './sketch-frame.ts'
import { paint } from './sketch-patterns.ts'
import { groundInk, levelInk, loadInk } from './sketch-signs.ts'
import { along, black, head, line, path, slash, unit } from './sketch-strokes.ts'
import { around, aside, half, type Ink, inked, marked } from './sketch-wish.ts'

const weights = { thin: 0.5, medium: 0.9, thick: 1.5 } as const

/** Draws one shape. */
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
