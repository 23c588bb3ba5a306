import type { Citation } from './sources.ts'

/** An axis of words (a choice picks the row) or of rising numbers (interpolated between). */
export type Axis =
  | {
      readonly kind: 'words'
      readonly says: string
      readonly keys: readonly string[]
      readonly titles?: readonly string[]
    }
  | {
      readonly kind: 'numbers'
      readonly says: string
      /** As printed in the source, rising. */
      readonly keys: readonly string[]
      /** Unit of the keys; `''` for a ratio. */
      readonly unit: string
      /** `linear` between keys; `none`: only printed keys are allowed. */
      readonly between: 'linear' | 'none'
    }

/** A published table. Cells are the printed characters; an empty cell has no value and is refused. */
export interface Table {
  readonly title: string
  readonly source: Citation
  /** How sure we are of the entries, printed beside the neighbourhood. */
  readonly status: string
  readonly unit: string
  readonly row: Axis
  readonly column?: Axis
  readonly cells: readonly (readonly string[])[]
}

/**
 * A table from text: one line a row, cells parted by blanks, `-` for an empty cell.
 * Refuses (throws, our own bug) a shape that does not fit its axes.
 */
export function table(head: Omit<Table, 'cells'>, text: string): Table {
  const cells = text
    .trim()
    .split('\n')
    .map(line =>
      line
        .trim()
        .split(/\s+/)
        .map(cell => (cell === '-' ? '' : cell)),
    )
  const width = head.column?.keys.length ?? 1
  if (cells.length !== head.row.keys.length || cells.some(row => row.length !== width)) {
    throw new Error(`table ${head.title}: cells do not fit the axes`)
  }
  return { ...head, cells }
}
