import { elementShapes, type ShapeValues } from './element-shapes.ts'
import { entry } from './numeric-refusal.ts'

/** How an edge of a plate is held. */
export type EdgeKind = 'fixed' | 'simple' | 'free'

/** One axis of a plate, t from 0 to 1, cut into elements at `breaks`; a `mirror` end is a line of symmetry. */
export type PlateAxis = {
  readonly ends: readonly [EdgeKind, EdgeKind | 'mirror']
  /** Ends of the elements, 0 and 1 included. */
  readonly breaks: readonly number[]
  /** Number of inner shapes of each element. */
  readonly inner: readonly number[]
}

/** Which of value and slope an end keeps: the others are held at nil. */
const kept = { fixed: [], simple: ['slope'], free: ['value', 'slope'], mirror: ['value'] } as const

/** Number of shapes of an axis. */
export function shapeCount({ ends, inner }: PlateAxis): number {
  const shared = 2 * (inner.length - 1)
  return kept[ends[0]].length + kept[ends[1]].length + shared + inner.reduce((sum, count) => sum + count, 0)
}

/** Place among the shapes of the axis of each shape of element `index` (-1 where it is held at nil). */
export function elementPlaces(axis: PlateAxis, index: number): readonly number[] {
  const start = kept[axis.ends[0]].length
  const before = axis.inner.slice(0, index).reduce((sum, count) => sum + count + 2, start)
  const first = index === 0 ? endPlaces(axis.ends[0], 0) : [before - 2, before - 1]
  const inner = Array.from({ length: entry(axis.inner, index) }, (_, i) => before + i)
  const after = before + inner.length
  const last = index === axis.inner.length - 1 ? endPlaces(axis.ends[1], after) : [after, after + 1]
  return [...first, ...inner, ...last]
}

function endPlaces(kind: EdgeKind | 'mirror', from: number): readonly number[] {
  const names: readonly string[] = kept[kind]
  return ['value', 'slope'].map(name => (names.includes(name) ? from + names.indexOf(name) : -1))
}

/** Shapes of element `index` with derivatives by t; slope cubics have a unit slope by t. `s` from -1 to 1. */
export function axisElementShapes(axis: PlateAxis, index: number, s: number): ShapeValues {
  const length = entry(axis.breaks, index + 1) - entry(axis.breaks, index)
  const inner = entry(axis.inner, index)
  const shapes = elementShapes(inner, s)
  // Slope cubics keep a unit slope by t, inner shapes a unit bending energy, so that the matrix is well conditioned.
  const [slope, energy] = [length / 2, (length / 2) ** 1.5]
  for (let order = 0, by = 1; order < 4; order++, by *= 2 / length) {
    const list = shapes[order as 0 | 1 | 2 | 3]
    for (let i = 0; i < inner + 4; i++) {
      const scale = i === 0 || i === inner + 2 ? 1 : i === 1 || i === inner + 3 ? slope : energy
      list[i] = (list[i] as number) * by * scale
    }
  }
  return shapes
}

/** The shapes that are not nil at a place: the one at `from` among those of the axis, and those that follow it. */
export type LocalShapes = { readonly from: number; readonly shapes: ShapeValues }

/** Shapes of `axis` that are not nil at `t` (0 to 1), with derivatives by t. */
export function shapesAt(axis: PlateAxis, t: number): LocalShapes {
  const last = axis.inner.length - 1
  const found = axis.breaks.findIndex((_, i) => i === last || t < entry(axis.breaks, i + 1))
  const [start, end] = [entry(axis.breaks, found), entry(axis.breaks, found + 1)]
  const all = axisElementShapes(axis, found, (2 * (t - start)) / (end - start) - 1)
  const places = elementPlaces(axis, found)
  const held = places.filter(place => place >= 0)
  if (held.length === places.length) return { from: entry(held, 0), shapes: all }
  const pick = (list: readonly number[]) => list.filter((_, i) => entry(places, i) >= 0)
  return { from: entry(held, 0), shapes: [pick(all[0]), pick(all[1]), pick(all[2]), pick(all[3])] }
}
