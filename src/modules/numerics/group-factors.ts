import { NumericRefusal } from './numeric-refusal.ts'
import { groupRows, type RowGroups, rowGroups, widthOf } from './row-groups.ts'
import type { SymmetricBand } from './symmetric-band.ts'

/**
 * Cholesky factors of a matrix, by groups of rows. Panels and plates need millions of these products: the loops run over
 * typed arrays, without objects or bounds questions.
 */
export function groupFactors(matrix: SymmetricBand): RowGroups {
  const groups = rowGroups(matrix)
  const { count, entries, starts, origins } = groups
  for (let group = 0; group < count; group++) {
    const start = starts[group] as number
    const width = widthOf(groups, group)
    const row = origins[group] as number
    for (let other = start / groupRows; other < group; other++) {
      const from = Math.min(groupRows * other, Math.max(start, starts[other] as number))
      const left: Left = { row: origins[other] as number, width: widthOf(groups, other), from, to: groupRows * other }
      twoRows(entries, row, row + width, left)
      twoRows(entries, row + 2 * width, row + 3 * width, left)
    }
    ownBlock(matrix, groups, group)
  }
  return groups
}

/** Rows of a group further up: where column 0 of the first would stand, how far the next is, and which columns to sum. */
interface Left {
  readonly row: number
  readonly width: number
  readonly from: number
  readonly to: number
}

/** The factors of two rows against the four of a group: eight sums side by side from six entries. */
function twoRows(l: Float64Array, p: number, q: number, { row: a, width, from, to }: Left): void {
  const b = a + width
  const c = b + width
  const d = c + width
  let p0 = 0
  let p1 = 0
  let p2 = 0
  let p3 = 0
  let q0 = 0
  let q1 = 0
  let q2 = 0
  let q3 = 0
  for (let k = from; k < to; k++) {
    const x = l[p + k] as number
    const y = l[q + k] as number
    const u = l[a + k] as number
    const v = l[b + k] as number
    const w = l[c + k] as number
    const z = l[d + k] as number
    p0 += x * u
    q0 += y * u
    p1 += x * v
    q1 += y * v
    p2 += x * w
    q2 += y * w
    p3 += x * z
    q3 += y * z
  }
  lastFour(l, p + to, a + to, { width, sums: [p0, p1, p2, p3] })
  lastFour(l, q + to, a + to, { width, sums: [q0, q1, q2, q3] })
}

/** Four factors of a row from the sums left of them: each in turn less what those before it give. */
function lastFour(
  l: Float64Array,
  p: number,
  a: number,
  { width, sums }: { width: number; sums: readonly [number, number, number, number] },
): void {
  const b = a + width
  const c = b + width
  const d = c + width
  const at = (place: number): number => l[place] as number
  const p0 = (at(p) - sums[0]) / at(a)
  const p1 = (at(p + 1) - sums[1] - p0 * at(b)) / at(b + 1)
  const p2 = (at(p + 2) - sums[2] - p0 * at(c) - p1 * at(c + 1)) / at(c + 2)
  const p3 = (at(p + 3) - sums[3] - p0 * at(d) - p1 * at(d + 1) - p2 * at(d + 2)) / at(d + 3)
  l[p] = p0
  l[p + 1] = p1
  l[p + 2] = p2
  l[p + 3] = p3
}

/** The rows of a group against each other. */
function ownBlock({ size, band, rows }: SymmetricBand, groups: RowGroups, group: number): void {
  const { entries: l, starts, origins } = groups
  const start = starts[group] as number
  const width = widthOf(groups, group)
  const first = groupRows * group
  for (let i = first; i < first + groupRows; i++) {
    const p = (origins[group] as number) + (i - first) * width
    for (let j = first; j <= i; j++) {
      const q = (origins[group] as number) + (j - first) * width
      let sum = l[p + j] as number
      for (let k = start; k < j; k++) sum -= (l[p + k] as number) * (l[q + k] as number)
      if (j < i) l[p + j] = sum / (l[q + j] as number)
      else if (i < size) l[p + i] = Math.sqrt(positive(sum, rows[i * (band + 1) + band] as number))
    }
  }
}

function positive(pivot: number, diagonal: number): number {
  if (pivot > 1e-13 * Math.abs(diagonal)) return pivot
  throw new NumericRefusal('matrix', 'Expected a positive definite matrix, got one that is singular or indefinite')
}
