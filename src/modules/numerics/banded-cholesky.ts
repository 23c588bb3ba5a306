import { NumericRefusal } from './numeric-refusal.ts'

/**
 * A symmetric matrix kept as the lower band: row i holds columns i - `band` to i in `rows[i*(band+1) ...]`,
 * the diagonal last; places left of column 0 are zero.
 */
export type SymmetricBand = { readonly size: number; readonly band: number; readonly rows: Float64Array }

/** An empty (all zero) symmetric band matrix of `size` rows and half width `band`. */
export function symmetricBand(size: number, band: number): SymmetricBand {
  return { size, band, rows: new Float64Array(size * (band + 1)) }
}

/**
 * Solution of `matrix` x = `load` by Cholesky factors; neither argument is changed.
 * Refuses a matrix that is not positive definite (a structure that does not stand).
 */
export function solveBand(matrix: SymmetricBand, load: Float64Array): Float64Array {
  return solverOf(matrix)(load)
}

/** The same for several loads: the factors are found once. */
export function solverOf(matrix: SymmetricBand): (load: Float64Array) => Float64Array {
  const rows = factor(matrix)
  return load => {
    const x = Float64Array.from(load)
    forward(rows, x, matrix.band)
    backward(rows, x, matrix.band)
    return x
  }
}

// Nothing left of the first entry of a row fills in, so the sums start there. A plate needs some millions of these
// products: the loops run over typed arrays, without objects or bounds questions.
function factor(matrix: SymmetricBand): Float64Array {
  const { size, band, rows } = matrix
  const l = Float64Array.from(rows)
  const first = firstEntries(matrix)
  for (let i = 0; i < size; i++) {
    const rowI = i * (band + 1) + band - i
    const firstI = first[i] as number
    for (let j = firstI; j <= i; j++) {
      const rowJ = j * (band + 1) + band - j
      const from = Math.max(firstI, first[j] as number)
      let sum = l[rowI + j] as number
      let k = from
      // Two sums side by side, because one sum waits for each addition before the next.
      let other = 0
      for (; k + 1 < j; k += 2) {
        sum -= (l[rowI + k] as number) * (l[rowJ + k] as number)
        other -= (l[rowI + k + 1] as number) * (l[rowJ + k + 1] as number)
      }
      if (k < j) sum -= (l[rowI + k] as number) * (l[rowJ + k] as number)
      sum += other
      if (j < i) l[rowI + j] = sum / (l[rowJ + j] as number)
      else l[rowI + i] = Math.sqrt(positive(sum, rows[rowI + i] as number))
    }
  }
  return l
}

function firstEntries({ size, band, rows }: SymmetricBand): Int32Array {
  return Int32Array.from({ length: size }, (_, i) => {
    let column = Math.max(0, i - band)
    while (column < i && rows[i * (band + 1) + band - i + column] === 0) column++
    return column
  })
}

function positive(pivot: number, diagonal: number): number {
  if (pivot > 1e-13 * Math.abs(diagonal)) return pivot
  throw new NumericRefusal('matrix', 'Expected a positive definite matrix, got one that is singular or indefinite')
}

function forward(l: Float64Array, x: Float64Array, band: number): void {
  for (let i = 0; i < x.length; i++) {
    const row = i * (band + 1) + band - i
    let sum = x[i] as number
    for (let k = Math.max(0, i - band); k < i; k++) sum -= (l[row + k] as number) * (x[k] as number)
    x[i] = sum / (l[row + i] as number)
  }
}

function backward(l: Float64Array, x: Float64Array, band: number): void {
  for (let i = x.length - 1; i >= 0; i--) {
    const row = i * (band + 1) + band - i
    const value = (x[i] as number) / (l[row + i] as number)
    x[i] = value
    for (let k = Math.max(0, i - band); k < i; k++) x[k] = (x[k] as number) - (l[row + k] as number) * value
  }
}
