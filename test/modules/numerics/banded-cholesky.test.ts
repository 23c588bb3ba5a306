import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { solveBand } from '../../../src/modules/numerics/banded-cholesky.ts'
import { symmetricBand } from '../../../src/modules/numerics/symmetric-band.ts'

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

  // Rows are done in fours: every size about two groups, alone and with rows that begin anywhere.
  it.each(Array.from({ length: 13 }, (_, i) => i + 1))('min(i, j), whose factors are all 1, of %d rows', size => {
    const matrix = symmetricBand(size, size - 1)
    for (let i = 0; i < size; i++) for (let j = 0; j <= i; j++) matrix.rows[i * size + size - 1 - i + j] = j + 1
    const counted = Float64Array.from({ length: size }, (_, i) => i + 1)
    // The last column is 1 to n, so the solution is nil but for a 1 at the end; the first is all 1.
    expect(Array.from(solveBand(matrix, counted))).toEqual([...Array(size - 1).fill(0), 1])
    expect(Array.from(solveBand(matrix, new Float64Array(size).fill(1)))).toEqual([1, ...Array(size - 1).fill(0)])
  })

  it('any skyline in any band: the load comes back when the solution is put in', () => {
    const part = fc.double({ min: -1, max: 1, noNaN: true })
    const of = fc.integer({ min: 1, max: 22 }).chain(size =>
      fc.record({
        size: fc.constant(size),
        band: fc.integer({ min: 0, max: size - 1 }),
        begins: fc.array(fc.integer({ min: 0, max: size }), { minLength: size, maxLength: size }),
        parts: fc.array(part, { minLength: size * size, maxLength: size * size }),
        load: fc.array(part, { minLength: size, maxLength: size }),
      }),
    )
    fc.assert(
      fc.property(of, ({ size, band, begins, parts, load }) => {
        const at = (i: number, j: number): number =>
          i === j ? 2 * size : j < i && j >= Math.max(i - band, begins[i]!) ? parts[i * size + j]! : 0
        const matrix = symmetricBand(size, band)
        for (let i = 0; i < size; i++)
          for (let j = Math.max(0, i - band); j <= i; j++) matrix.rows[i * (band + 1) + band - i + j] = at(i, j)
        const x = solveBand(matrix, Float64Array.from(load))
        expect(x).toHaveLength(size)
        load.forEach((part, i) => {
          const got = x.reduce((sum, value, j) => sum + at(Math.max(i, j), Math.min(i, j)) * value, 0)
          expect(Math.abs(got - part)).toBeLessThan(1e-13)
        })
      }),
      { numRuns: 300, seed: 7 },
    )
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
