import { groupFactors } from './group-factors.ts'
import { groupRows, originOf, type RowGroups, startOf } from './row-groups.ts'
import type { SymmetricBand } from './symmetric-band.ts'

/**
 * Solution of `matrix` x = `load` by Cholesky factors; neither argument is changed.
 * Refuses a matrix that is not positive definite (a structure that does not stand).
 */
export function solveBand(matrix: SymmetricBand, load: Float64Array): Float64Array {
  return solverOf(matrix)(load)
}

/** The same for several loads: the factors are found once. */
export function solverOf(matrix: SymmetricBand): (load: Float64Array) => Float64Array {
  const factors = groupFactors(matrix)
  return load => {
    const x = new Float64Array(groupRows * factors.count)
    x.set(load)
    forward(factors, x)
    backward(factors, x)
    return x.slice(0, matrix.size)
  }
}

function forward(factors: RowGroups, x: Float64Array): void {
  const { entries: l } = factors
  for (let i = 0; i < x.length; i++) {
    const row = originOf(factors, i)
    let sum = x[i] as number
    for (let k = startOf(factors, i); k < i; k++) sum -= (l[row + k] as number) * (x[k] as number)
    x[i] = sum / (l[row + i] as number)
  }
}

function backward(factors: RowGroups, x: Float64Array): void {
  const { entries: l } = factors
  for (let i = x.length - 1; i >= 0; i--) {
    const row = originOf(factors, i)
    const value = (x[i] as number) / (l[row + i] as number)
    x[i] = value
    for (let k = startOf(factors, i); k < i; k++) x[k] = (x[k] as number) - (l[row + k] as number) * value
  }
}
