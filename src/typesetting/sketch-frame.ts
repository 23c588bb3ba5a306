import type { Drawing, Point, Shape } from '../modules/sketch.ts'

/** A rectangle on the paper, in points, y downwards. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** From world to paper. */
export type Place = (point: Point) => Point

export interface Frame {
  readonly place: Place
  /** The world's own rectangle on the paper. */
  readonly box: Box
}

export interface Pads {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface Sheet {
  /** The widest and highest the sketch may be, in points. */
  readonly width: number
  readonly height: number
}

/** The world fitted into the sheet less its pads: one scale where the drawing is to scale, two where it is a chart. */
export function frame(drawing: Drawing, sheet: Sheet, pads: Pads): Frame {
  const world = bounds(drawing.shapes.flatMap(worldPoints))
  const wide = Math.max(world.right - world.left, 1e-9)
  const high = Math.max(world.bottom - world.top, 1e-9)
  const across = Math.max(sheet.width - pads.left - pads.right, 20) / wide
  const down = Math.max(sheet.height - pads.top - pads.bottom, 20) / high
  const [kx, ky] = drawing.toScale ? [Math.min(across, down), Math.min(across, down)] : [across, down]
  const place: Place = ([x, y]) => [pads.left + (x - world.left) * kx, pads.top + (world.bottom - y) * ky]
  const box = { left: pads.left, top: pads.top, right: pads.left + wide * kx, bottom: pads.top + high * ky }
  return { place, box }
}

/** The rectangle round some points; a unit square round none. */
export function bounds(points: readonly Point[]): Box {
  const sound = points.filter(([x, y]) => Number.isFinite(x) && Number.isFinite(y))
  if (sound.length === 0) return { left: 0, top: 0, right: 1, bottom: 1 }
  const xs = sound.map(p => p[0])
  const ys = sound.map(p => p[1])
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) }
}

/** The rectangle round some rectangles. */
export function union(boxes: readonly Box[]): Box {
  return bounds(
    boxes.flatMap((box): Point[] => [
      [box.left, box.top],
      [box.right, box.bottom],
    ]),
  )
}

/** True where two rectangles share more than their edge. */
export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
}

/** True where a straight line runs through a rectangle. */
export function crosses(box: Box, [from, to]: readonly [Point, Point]): boolean {
  // Most lines of a drawing lie to one side of a label: they are told apart by their ends.
  if (Math.max(from[0], to[0]) < box.left || Math.min(from[0], to[0]) > box.right) return false
  if (Math.max(from[1], to[1]) < box.top || Math.min(from[1], to[1]) > box.bottom) return false
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  let [enters, leaves] = [0, 1]
  for (const [p, q] of [
    [-dx, from[0] - box.left],
    [dx, box.right - from[0]],
    [-dy, from[1] - box.top],
    [dy, box.bottom - from[1]],
  ] as const) {
    if (p === 0 && q < 0) return false
    if (p < 0) enters = Math.max(enters, q / p)
    if (p > 0) leaves = Math.min(leaves, q / p)
  }
  return enters < leaves
}

/** Whether every number a shape is drawn from is finite: what could not be evaluated is not drawn. */
export function drawable(shape: Shape): boolean {
  const numbers = worldPoints(shape).flat()
  return numbers.length > 0 && numbers.every(Number.isFinite)
}

function worldPoints(shape: Shape): Point[] {
  switch (shape.kind) {
    case 'polygon':
    case 'line':
    case 'ground':
      return [...shape.points]
    case 'arrow':
    case 'dimension':
      return [shape.from, shape.to]
    case 'label':
    case 'level':
      return [shape.at]
    case 'load':
      return [...loadOutline(shape)]
  }
}

/** The four corners of a distributed load: its line, then its outer edge back. */
export function loadOutline(load: Extract<Shape, { kind: 'load' }>): readonly [Point, Point, Point, Point] {
  const [tx, ty] = load.towards
  const length = Math.hypot(tx, ty) || 1
  const back = (from: Point, by: number): Point => [from[0] - (tx / length) * by, from[1] - (ty / length) * by]
  return [load.from, load.to, back(load.to, load.end), back(load.from, load.start)]
}
