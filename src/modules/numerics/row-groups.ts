import type { SymmetricBand } from './symmetric-band.ts'

/** Rows of a group: enough that an entry, once loaded, serves several products. */
export const groupRows = 4

/**
 * The lower half of a symmetric matrix in groups of rows. The rows of a group all begin at one column, the start of a group, and end
 * with it, so that groups meet without ends left over. Rows after the last of the matrix are those of a unit matrix.
 */
export interface RowGroups {
  readonly count: number
  readonly entries: Float64Array
  /** Column at which the rows of a group begin; nothing left of it fills in. */
  readonly starts: Int32Array
  /** Place of column 0 of the first row of a group, were it kept. */
  readonly origins: Int32Array
}

/** Entries from one row of a group to the next. */
export const widthOf = ({ starts }: RowGroups, group: number): number =>
  groupRows * (group + 1) - (starts[group] as number)

/** Place of column 0 of a row, were it kept. */
export function originOf(groups: RowGroups, row: number): number {
  const group = Math.floor(row / groupRows)
  return (groups.origins[group] as number) + (row % groupRows) * widthOf(groups, group)
}

/** Column at which a row begins. */
export const startOf = ({ starts }: RowGroups, row: number): number => starts[Math.floor(row / groupRows)] as number

/** A copy of the matrix in groups. */
export function rowGroups(matrix: SymmetricBand): RowGroups {
  const { size, band, rows } = matrix
  const count = Math.ceil(size / groupRows)
  const starts = groupStarts(matrix, count)
  const origins = new Int32Array(count)
  let length = 0
  for (let group = 0; group < count; group++) {
    const start = starts[group] as number
    origins[group] = length - start
    length += groupRows * (groupRows * (group + 1) - start)
  }
  const groups = { count, entries: new Float64Array(length), starts, origins }
  for (let row = 0; row < groupRows * count; row++) {
    const origin = originOf(groups, row)
    if (row >= size) {
      groups.entries[origin + row] = 1
      continue
    }
    const from = Math.max(0, row - band, startOf(groups, row))
    const base = row * (band + 1) + band - row
    groups.entries.set(rows.subarray(base + from, base + row + 1), origin + from)
  }
  return groups
}

function groupStarts({ size, band, rows }: SymmetricBand, count: number): Int32Array {
  const starts = Int32Array.from({ length: count }, (_, group) => groupRows * group)
  for (let row = 0; row < size; row++) {
    const group = Math.floor(row / groupRows)
    const base = row * (band + 1) + band - row
    let column = Math.max(0, row - band)
    while (column < row && rows[base + column] === 0) column++
    const start = column - (column % groupRows)
    if (start < (starts[group] as number)) starts[group] = start
  }
  return starts
}
