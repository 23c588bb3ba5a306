import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { interpolate, interpolateTwice, locate } from '../../../src/modules/numerics/interpolate.ts'
import { NumericRefusal } from '../../../src/modules/numerics/numeric-refusal.ts'

// BS 8110-1:1997 Table 3.14, one short edge discontinuous, short-span hogging, ratios 1.0 to 1.5 (memory).
const row = { axis: [1, 1.1, 1.2, 1.3, 1.4, 1.5], values: [0.039, 0.044, 0.048, 0.052, 0.055, 0.058] }

describe('interpolate: one axis', () => {
  it('halfway lies halfway, with its neighbours', () => {
    const { value, at, corners } = interpolate(row, 1.15)
    expect(value).toBeCloseTo(0.046, 12)
    expect(at.lower).toEqual({ index: 1, key: 1.1 })
    expect(at.upper).toEqual({ index: 2, key: 1.2 })
    expect(at.weight).toBeCloseTo(0.5, 12)
    expect(at.exact).toBe(false)
    expect(corners).toEqual([0.044, 0.048])
  })

  // IS 456 Table 26 panel 4 at 1.22 (published design sheet, looked up): 0.0610 from 0.060 at 1.2 and 0.065 at 1.3.
  it('slab-15: 0.0610 as printed', () => {
    const { value } = interpolate({ axis: [1.2, 1.3], values: [0.06, 0.065] }, 1.22)
    expect(Math.abs(value - 0.061)).toBeLessThanOrEqual(0.00005)
  })

  it('at a node, or 1e-9 from it, the value is the node, to the last bit', () => {
    for (const [i, key] of row.axis.entries()) {
      for (const off of [0, 0.9e-9, -0.9e-9]) {
        const { value, at } = interpolate(row, key * (1 + off))
        expect(value).toBe(row.values[i])
        expect(at.exact).toBe(true)
        expect(at.lower).toBe(at.upper)
      }
    }
    expect(interpolate(row, 0.1 + 0.2 + 0.8).value).toBe(0.044)
    expect(interpolate(row, 1.1 * (1 + 2e-9)).at.exact).toBe(false)
  })

  it('a falling axis reads like a rising one', () => {
    const falling = { axis: [1, 0.9, 0.8], values: [10, 20, 40] }
    const { value, at } = interpolate(falling, 0.85)
    expect(value).toBeCloseTo(30, 12)
    expect([at.lower.key, at.upper.key]).toEqual([0.9, 0.8])
  })

  it('a node at 0 has a tolerance of its own', () => {
    expect(locate([-10, 0, 10], 1e-9).exact).toBe(true)
    expect(locate([-10, 0, 10], 1e-7).exact).toBe(false)
  })

  it('one key alone answers at that key only', () => {
    expect(interpolate({ axis: [2], values: [7] }, 2).value).toBe(7)
    expect(() => interpolate({ axis: [2], values: [7] }, 2.1)).toThrow('Expected `key` from 2 to 2, got 2.1')
  })

  it('never leaves its neighbours, and rises with rising values', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        (a, b) => {
          const [low, high] = [Math.min(a, b), Math.max(a, b)]
          const { value, corners } = interpolate(row, low)
          expect(value).toBeGreaterThanOrEqual(corners[0])
          expect(value).toBeLessThanOrEqual(corners[1])
          expect(value).toBeLessThanOrEqual(interpolate(row, high).value + 1e-10)
        },
      ),
    )
  })
})

describe('interpolate: two axes', () => {
  const grid = {
    rows: [1, 2],
    columns: [10, 20, 40],
    values: [
      [1, 2, 3],
      [5, 8, undefined],
    ],
  }

  it('reads the four corners', () => {
    const result = interpolateTwice(grid, { row: 1.25, column: 15 })
    expect(result.value).toBeCloseTo(0.75 * 1.5 + 0.25 * 6.5, 12)
    expect(result.corners).toEqual([
      [1, 2],
      [5, 8],
    ])
    expect(result.row.lower.key).toBe(1)
    expect(result.column.upper.key).toBe(20)
  })

  it('is exact at nodes, and needs no more of the table than it uses', () => {
    expect(interpolateTwice(grid, { row: 2, column: 20 }).value).toBe(8)
    expect(interpolateTwice(grid, { row: 1, column: 30 }).value).toBe(2.5)
  })

  it('gives back any plane', () => {
    const keys = fc.record({
      row: fc.double({ min: 1, max: 2, noNaN: true }),
      column: fc.double({ min: 10, max: 40, noNaN: true }),
    })
    const plane = { ...grid, values: grid.rows.map(r => grid.columns.map(c => 3 * r - 0.2 * c + 1)) }
    fc.assert(
      fc.property(keys, key => {
        expect(interpolateTwice(plane, key).value).toBeCloseTo(3 * key.row - 0.2 * key.column + 1, 7)
      }),
    )
  })

  it('refuses a blank corner, and names the key outside', () => {
    expect(() => interpolateTwice(grid, { row: 1.5, column: 30 })).toThrow('got a blank')
    expect(() => interpolateTwice(grid, { row: 2.1, column: 30 })).toThrow('Expected `row` from 1 to 2, got 2.1')
    const names = { row: 'panel', column: 'ratio' }
    expect(() => interpolateTwice(grid, { row: 1, column: 41 }, names)).toThrow(
      'Expected `ratio` from 10 to 40, got 41',
    )
    expect(() => interpolateTwice({ ...grid, values: [[1, 2, 3]] }, { row: 1, column: 10 })).toThrow('got 1 for 2')
  })
})

describe('interpolate: refusals', () => {
  it.each([0.99, 1.51, Number.NaN, Number.POSITIVE_INFINITY])('key %d', key => {
    expect(() => interpolate(row, key)).toThrow(NumericRefusal)
  })

  it.each([[[1, 1, 2]], [[1, 3, 2]], [[3, 1, 2]], [[1, Number.NaN, 2]], [[]]])('axis %o', axis => {
    expect(() => locate(axis, 1)).toThrow('`axis`')
  })

  it('values that are not as many as the keys', () => {
    expect(() => interpolate({ axis: [1, 2], values: [1] }, 1)).toThrow(
      'Expected as many `values` as keys, got 1 for 2',
    )
  })
})
