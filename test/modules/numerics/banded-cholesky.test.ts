import { describe, expect, it } from 'vitest'
import { solveBand, symmetricBand } from '../../../src/modules/numerics/banded-cholesky.ts'

/** The band of the second difference: 2 on the diagonal, -1 beside it. */
function secondDifference(size: number, diagonal = 2) {
  const matrix = symmetricBand(size, 1)
  for (let i = 0; i < size; i++) {
    matrix.rows[2 * i] = i === 0 ? 0 : -1
    matrix.rows[2 * i + 1] = diagonal
  }
  return matrix
}

describe('banded Cholesky: solutions', () => {
  // -u'' = 1 with nil ends: differences are exact at the nodes, u = x (1 - x)/2.
  it('the second difference under a uniform load', () => {
    const solved = solveBand(secondDifference(9), new Float64Array(9).fill(0.01))
    solved.forEach((u, i) => {
      const x = (i + 1) / 10
      expect(u).toBeCloseTo((x * (1 - x)) / 2, 14)
    })
  })

  it('refuses a matrix that is singular but for rounding', () => {
    const matrix = (last: number) => ({ size: 2, band: 1, rows: Float64Array.of(0, 1, 1, last) })
    expect(() => solveBand(matrix(1 + 4e-14), Float64Array.of(1, 1))).toThrow('singular')
    expect(() => solveBand(matrix(1 + 1e-12), Float64Array.of(1, 1))).not.toThrow()
  })

  it('leaves matrix and load as they were', () => {
    const [matrix, load] = [secondDifference(4), Float64Array.of(1, 2, 3, 4)]
    solveBand(matrix, load)
    expect(matrix.rows).toEqual(secondDifference(4).rows)
    expect(load).toEqual(Float64Array.of(1, 2, 3, 4))
  })

  it('rows that start late are solved like full ones', () => {
    const full = symmetricBand(3, 2)
    full.rows.set([0, 0, 4, 0, 0, 5, 1, 2, 6])
    const x = solveBand(full, Float64Array.of(4 + 3, 10 + 6, 1 + 4 + 18))
    expect(Array.from(x)).toEqual([1, 2, 3].map(v => expect.closeTo(v, 14)))
  })

  it.each([0, -1, 1])('refuses a matrix with %d on its diagonal', diagonal => {
    expect(() => solveBand(secondDifference(5, diagonal), new Float64Array(5))).toThrow('positive definite')
  })
})
