import type { Axis, Table } from '../table.ts'

/** Where a key stands on an axis: between two printed keys, or on one (`lower === upper`). */
export interface Position {
  readonly lower: number
  readonly upper: number
  /** 0 at the lower key, 1 at the upper. */
  readonly weight: number
}

export type LookKey = number | { readonly value: number } | undefined

export type Looked =
  | { readonly ok: true; readonly value: number; readonly row: Position; readonly column: Position }
  | { readonly ok: false; readonly says: string }

/**
 * The value of a table at a row and column, in the table's own unit: linear between printed keys where the axis says so,
 * exact on a key (within 1e-9). Refuses outside the printed keys, between them on an axis that does not interpolate,
 * and where a cell it needs is empty.
 */
export function lookIn(table: Table, keys: { readonly row: LookKey; readonly column: LookKey }): Looked {
  const row = positionOn(table.row, keys.row)
  const column = table.column ? positionOn(table.column, keys.column) : on(0)
  if (typeof row === 'string') return { ok: false, says: row }
  if (typeof column === 'string') return { ok: false, says: column }
  const cell = (r: number, c: number): number => {
    const text = table.cells[r]?.[c]
    return text ? Number(text) : Number.NaN
  }
  const along = (r: number): number => between(cell(r, column.lower), cell(r, column.upper), column.weight)
  const value = between(along(row.lower), along(row.upper), row.weight)
  if (Number.isNaN(value)) return { ok: false, says: `${table.title} has no entry here` }
  return { ok: true, value, row, column }
}

const between = (a: number, b: number, weight: number): number => (weight === 0 ? a : a + (b - a) * weight)

const on = (index: number): Position => ({ lower: index, upper: index, weight: 0 })

/** Where a key stands on an axis; a sentence where it does not. The key's value is in the axis's printed unit. */
function positionOn(axis: Axis, key: LookKey): Position | string {
  if (typeof key === 'number') return on(key)
  if (axis.kind === 'words' || !key) return `${axis.says} is not known`
  const keys = axis.keys.map(Number)
  const exact = keys.findIndex(
    printed => Math.abs(printed - key.value) <= 1e-9 * Math.max(Math.abs(printed), Math.abs(key.value)),
  )
  if (exact >= 0) return on(exact)
  const upper = keys.findIndex(printed => printed > key.value)
  if (!(upper > 0)) return `${axis.says} lies outside ${axis.keys[0]} to ${axis.keys.at(-1)}`
  if (axis.between === 'none') return `${axis.says} must be one of ${axis.keys.join(', ')}`
  const lower = upper - 1
  const from = keys[lower] ?? Number.NaN
  return { lower, upper, weight: (key.value - from) / ((keys[upper] ?? Number.NaN) - from) }
}
