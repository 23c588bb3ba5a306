import { type LocalShapes, type PlateAxis, shapeCount, shapesAt } from './plate-axis.ts'
import type { PlateField } from './plate-field.ts'

/** Deflection, moments and shears at one place, as multiples of q a^4/D, q a^2 and q a. Sagging is positive. */
export type PlateState = {
  readonly deflection: number
  /** Moment that bends the plate along x (steel along x), per width; likewise `my` along y. */
  readonly mx: number
  readonly my: number
  readonly mxy: number
  readonly qx: number
  readonly qy: number
  /** Kirchhoff shears: the shear with the change of the twisting moment along the edge. */
  readonly vx: number
  readonly vy: number
}

/** State of the plate at x = `x` a, y = `y` b (`x` and `y` from 0 to 1). Source: as `plateField`, chapters 2 and 4. */
export function plateStateAt(field: PlateField, x: number, y: number): PlateState {
  return stateOnLine(field, lineAt(field, x), sideShapes(field.y, y, field.lengths[1]))
}

/** Reads states place by place as `plateStateAt` does. A search keeps to a line for a while: the last line and row are remembered. */
export function plateReader(field: PlateField): (x: number, y: number) => PlateState {
  let line: { readonly x: number; readonly values: PlateLine } | undefined
  let row: { readonly y: number; readonly local: LocalShapes } | undefined
  return (x, y) => {
    if (line?.x !== x) line = { x, values: lineAt(field, x) }
    if (row?.y !== y) row = { y, local: sideShapes(field.y, y, field.lengths[1]) }
    return stateOnLine(field, line.values, row.local)
  }
}

/** States at every place of `xs` and `ys`, by `[x][y]`. */
export function plateStates(
  field: PlateField,
  xs: readonly number[],
  ys: readonly number[],
): readonly (readonly PlateState[])[] {
  const rows = ys.map(y => sideShapes(field.y, y, field.lengths[1]))
  return xs.map(x => {
    const line = lineAt(field, x)
    return rows.map(row => stateOnLine(field, line, row))
  })
}

/** Shapes by place: a search reads the same places of an axis again and again, under every load. */
const placesOf = new WeakMap<PlateAxis, Map<number, LocalShapes>>()
const mostPlaces = 512

function sideShapes(axis: PlateAxis, place: number, length: number): LocalShapes {
  const places = placesOf.get(axis) ?? new Map<number, LocalShapes>()
  placesOf.set(axis, places)
  const known = places.get(place)
  if (known) return known
  if (places.size >= mostPlaces) places.clear()
  const found = ownShapes(axis, place, length)
  places.set(place, found)
  return found
}

// Shapes with derivatives by the plate's own coordinate; past a mirror the odd derivatives change sign.
function ownShapes(axis: PlateAxis, place: number, length: number): LocalShapes {
  const mirror = axis.ends[1] === 'mirror'
  const beyond = mirror && place > 0.5
  const local = shapesAt(axis, mirror ? 2 * (beyond ? 1 - place : place) : place)
  const step = (beyond ? -1 : 1) / length
  for (let order = 1, by = step; order < 4; order++, by *= step) {
    const list = local.shapes[order as 1 | 2 | 3]
    for (let i = 0; i < list.length; i++) list[i] = (list[i] as number) * by
  }
  return local
}

/** The surface and its three x derivatives (one after another in `sums`) along a line of constant x, as coefficients of the y shapes. */
type PlateLine = { readonly columns: number; readonly sums: Float64Array }

function lineAt({ x: axis, lengths, coefficients }: PlateField, x: number): PlateLine {
  const { from, shapes } = sideShapes(axis, x, lengths[0])
  const columns = coefficients.length / shapeCount(axis)
  const sums = new Float64Array(4 * columns)
  for (let order = 0; order < 4; order++) {
    const weights = shapes[order as 0 | 1 | 2 | 3]
    const end = (order + 1) * columns
    for (let i = 0, at = from * columns; i < weights.length; i++) {
      const weight = weights[i] as number
      for (let place = end - columns; place < end; place++, at++) {
        sums[place] = (sums[place] as number) + weight * (coefficients[at] as number)
      }
    }
  }
  return { columns, sums }
}

function stateOnLine({ panel: { nu } }: PlateField, line: PlateLine, { from, shapes }: LocalShapes): PlateState {
  const { columns, sums } = line
  const by = (m: 0 | 1 | 2 | 3, n: 0 | 1 | 2 | 3) => dot(sums, shapes[n], m * columns + from)
  const [wxx, wyy] = [by(2, 0), by(0, 2)]
  const [wxxx, wxyy, wyyy, wxxy] = [by(3, 0), by(1, 2), by(0, 3), by(2, 1)]
  return {
    deflection: by(0, 0),
    mx: -(wxx + nu * wyy),
    my: -(wyy + nu * wxx),
    mxy: (1 - nu) * by(1, 1),
    qx: -(wxxx + wxyy),
    qy: -(wyyy + wxxy),
    vx: -(wxxx + (2 - nu) * wxyy),
    vy: -(wyyy + (2 - nu) * wxxy),
  }
}

function dot(line: Float64Array, shape: readonly number[], from: number): number {
  let sum = 0
  for (let i = 0; i < shape.length; i++) sum += (line[from + i] as number) * (shape[i] as number)
  return sum
}
