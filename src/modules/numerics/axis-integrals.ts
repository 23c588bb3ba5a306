import type { ShapeValues } from './element-shapes.ts'
import { gaussLegendre } from './gauss-legendre.ts'
import { entry } from './numeric-refusal.ts'
import { axisElementShapes, elementPlaces, type PlateAxis, shapeCount } from './plate-axis.ts'

/**
 * Integrals over 0 to 1 of products of shapes of one axis, row by row (`d20`: second derivative of the row's shape times
 * value of the column's), and of single shapes, plain (`even`) and times t (`rising`). `reach`: how many shapes
 * back two shapes still share an element.
 */
export type AxisIntegrals = {
  readonly count: number
  readonly reach: number
  readonly d00: Float64Array
  readonly d11: Float64Array
  readonly d22: Float64Array
  readonly d20: Float64Array
  readonly even: Float64Array
  readonly rising: Float64Array
}

/** Integrals of the shapes of `axis`; exact, the rule being of high enough degree. */
export function axisIntegrals(axis: PlateAxis): AxisIntegrals {
  const count = shapeCount(axis)
  const [square, row] = [() => new Float64Array(count * count), () => new Float64Array(count)]
  const sums = { d00: square(), d11: square(), d22: square(), d20: square(), even: row(), rising: row() }
  const integrals = { count, reach: Math.max(...axis.inner) + 3, ...sums }
  axis.inner.forEach((_, index) => {
    addElement(integrals, axis, index)
  })
  return integrals
}

function addElement(sum: AxisIntegrals, axis: PlateAxis, index: number): void {
  const [from, to] = [entry(axis.breaks, index), entry(axis.breaks, index + 1)]
  const rule = gaussLegendre(entry(axis.inner, index) + 4)
  const places = elementPlaces(axis, index)
  rule.places.forEach((s, g) => {
    const shapes = axisElementShapes(axis, index, s)
    const weight = (entry(rule.weights, g) * (to - from)) / 2
    addPlace(sum, shapes, { places, weight, t: from + ((1 + s) / 2) * (to - from) })
  })
}

type Place = { readonly places: readonly number[]; readonly weight: number; readonly t: number }

function addPlace(sum: AxisIntegrals, shapes: ShapeValues, { places, weight, t }: Place): void {
  const [v0, v1, v2] = shapes
  for (const [i, row] of places.entries()) {
    if (row < 0) continue
    const [a0, a1, a2] = [weight * entry(v0, i), weight * entry(v1, i), weight * entry(v2, i)]
    add(sum.even, row, a0)
    add(sum.rising, row, weight * t * entry(v0, i))
    for (let j = 0; j < places.length; j++) {
      const column = places[j] as number
      if (column < 0) continue
      const at = row * sum.count + column
      add(sum.d00, at, a0 * (v0[j] as number))
      add(sum.d11, at, a1 * (v1[j] as number))
      add(sum.d22, at, a2 * (v2[j] as number))
      add(sum.d20, at, a2 * (v0[j] as number))
    }
  }
}

function add(list: Float64Array, at: number, amount: number): void {
  list[at] = (list[at] as number) + amount
}
