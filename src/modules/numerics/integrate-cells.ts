import { finite, whole } from './numeric-refusal.ts'

export type CellRange = {
  readonly from: number
  readonly to: number
  /** Number of equal cells: 1 to 100 000. */
  readonly cells: number
  /** `trapezoid`: straight across a cell; `simpson`: a parabola through its ends and middle. */
  readonly rule: 'trapezoid' | 'simpson'
}

/** An integral over equal cells: the part of every cell (for a printed layer table), their sum, and a check. */
export type CellIntegral = {
  readonly value: number
  readonly parts: readonly { readonly from: number; readonly to: number; readonly value: number }[]
  /** Richardson's estimate of the error, from the same rule over cells twice as wide; absent for an odd number. */
  readonly error?: number
}

/**
 * Integral of `f` over `cells` equal cells by one rule, cell by cell. Exact for straight lines (trapezoid) and for
 * cubics (Simpson). Refuses ends and values that are not finite and a number of cells outside 1 to 100 000.
 * Source: composite trapezoidal and Simpson rules (Abramowitz and Stegun 25.4.2 and 25.4.6; memory).
 */
export function integrateCells(f: (x: number) => number, range: CellRange): CellIntegral {
  const { from, to, cells, rule } = range
  whole(cells, 'cells', { least: 1, most: 100_000 })
  const width = (finite(to, 'to') - finite(from, 'from')) / cells
  const edge = (i: number) => (i === cells ? to : from + i * width)
  const values = Array.from({ length: cells + 1 }, (_, i) => finite(f(edge(i)), 'f'))
  const parts = values.slice(1).map((last, i) => {
    const [start, end, first] = [edge(i), edge(i + 1), values[i] ?? last]
    const middle = rule === 'simpson' ? finite(f((start + end) / 2), 'f') : (first + last) / 2
    return { from: start, to: end, value: ((end - start) * (first + 4 * middle + last)) / 6 }
  })
  const value = parts.reduce((sum, part) => sum + part.value, 0)
  if (cells % 2 === 1) return { value, parts }
  const wide = wideSum(values, width, rule)
  return { value, parts, error: Math.abs(value - wide) / (rule === 'simpson' ? 15 : 3) }
}

// The cells' own ends are the ends and middles of cells twice as wide.
function wideSum(values: readonly number[], width: number, rule: CellRange['rule']): number {
  const [outer, middle] = rule === 'simpson' ? [1 / 3, 4 / 3] : [1, 0]
  const last = values.length - 1
  return values.reduce((sum, value, i) => {
    const weight = i % 2 === 1 ? middle : i === 0 || i === last ? outer : 2 * outer
    return sum + weight * value * width
  }, 0)
}
