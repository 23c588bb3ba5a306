import type { Column } from '../formula/column-kernels.ts'
import type { Sheet } from '../formula/columns.ts'

/** A sheet of columns made as they are asked for: slots that nothing moves hold their number as written. */
export interface SlotSheet extends Sheet {
  /** So many rows. */
  readonly length: number
  /** Where guards are gathered. */
  readonly mask: Column
  /** Slots for the numbers of one row. */
  readonly row: Float64Array
  /** Puts the starting number of every moved slot back into the first rows. */
  readonly restart: (rows: number) => void
}

/** The sheet of a study: `start` holds what a moved slot holds before a run, `base` the numbers as written. */
export function slotSheet(
  length: number,
  about: { readonly start: Float64Array; readonly base: Float64Array; readonly moved: (slot: number) => boolean },
): SlotSheet {
  const { start, base, moved } = about
  const filled = (value: number): Column => new Float64Array(length).fill(value)
  const slots = keptBy((at: number) => filled((moved(at) ? start : base)[at] as number))
  return {
    length,
    slot: slots.of,
    constant: keptBy(filled).of,
    spare: keptBy(() => new Float64Array(length)).of,
    mask: new Float64Array(length),
    row: new Float64Array(base.length),
    restart: rows => {
      for (const [at, column] of slots.kept) if (moved(at)) column.fill(start[at] as number, 0, rows)
    },
  }
}

/** Makes a column for each key once. */
function keptBy(make: (key: number) => Column): {
  readonly of: (key: number) => Column
  readonly kept: Map<number, Column>
} {
  const kept = new Map<number, Column>()
  const of = (key: number): Column => {
    const column = kept.get(key) ?? make(key)
    kept.set(key, column)
    return column
  }
  return { of, kept }
}
