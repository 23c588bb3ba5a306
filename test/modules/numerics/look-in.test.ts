import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lookIn } from '../../../src/modules/numerics/look-in.ts'
import { cite } from '../../../src/modules/sources.ts'
import { table } from '../../../src/modules/table.ts'

const head = { title: 'a table', source: cite('statics'), status: 'made for this test', unit: '' }
const rows = { kind: 'words', says: 'kind', keys: ['one', 'two'] } as const
const keys = {
  kind: 'numbers',
  says: 'ratio',
  keys: ['1.0', '1.1', '1.5', '2.0'],
  unit: '',
  between: 'linear',
} as const
const grid = table({ ...head, row: rows, column: keys }, '0.032 0.037 0.053 0.065\n0.045 - 0.060 0.069')
const value = (row: number, key: number): number => {
  const found = lookIn(grid, { row, column: { value: key } })
  if (!found.ok) throw new Error(found.says)
  return found.value
}

describe('lookIn', () => {
  it('gives the printed cell on a key, and within 1e-9 of it, without noise', () => {
    expect(value(0, 1.1)).toBe(0.037)
    expect(value(0, 1.1 * (1 + 5e-10))).toBe(0.037)
    expect(value(0, 2)).toBe(0.065)
  })

  it('interpolates between keys: half way between 1.5 and 2.0 (by hand)', () => {
    expect(value(0, 1.75)).toBeCloseTo(0.059, 15)
  })

  it('refuses outside the keys, just inside is read', () => {
    expect(lookIn(grid, { row: 0, column: { value: 0.999 } })).toMatchObject({
      ok: false,
      says: 'ratio lies outside 1.0 to 2.0',
    })
    expect(lookIn(grid, { row: 0, column: { value: 2.001 } }).ok).toBe(false)
    expect(lookIn(grid, { row: 0, column: { value: Number.NaN } }).ok).toBe(false)
    expect(lookIn(grid, { row: 0, column: { value: 1.9999 } }).ok).toBe(true)
  })

  it('refuses where a cell it needs is empty, and reads beside it', () => {
    expect(lookIn(grid, { row: 1, column: { value: 1.1 } })).toMatchObject({ ok: false })
    expect(lookIn(grid, { row: 1, column: { value: 1.3 } })).toMatchObject({ ok: false })
    expect(value(1, 1.75)).toBeCloseTo(0.0645, 15)
  })

  it('refuses between keys on an axis that does not interpolate', () => {
    const printed = table({ ...head, row: { ...keys, between: 'none' } }, '1\n2\n3\n4')
    expect(lookIn(printed, { row: { value: 1.5 }, column: undefined })).toMatchObject({ ok: true, value: 3 })
    expect(lookIn(printed, { row: { value: 1.2 }, column: undefined })).toMatchObject({ ok: false })
  })

  it('stays between its corners, in both directions', () => {
    const two = table({ ...head, row: { ...keys }, column: { ...keys } }, '1 2 3 4\n2 3 4 5\n4 5 6 7\n5 6 7 9')
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (row, column) => {
          const found = lookIn(two, { row: { value: row }, column: { value: column } })
          if (!found.ok) throw new Error(found.says)
          const corners = [found.row.lower, found.row.upper].flatMap(r =>
            [found.column.lower, found.column.upper].map(c => Number(two.cells[r]?.[c])),
          )
          expect(found.value).toBeGreaterThanOrEqual(Math.min(...corners) - 1e-12)
          expect(found.value).toBeLessThanOrEqual(Math.max(...corners) + 1e-12)
        },
      ),
    )
  })

  it('throws, as our own bug, where cells do not fit the axes', () => {
    expect(() => table({ ...head, row: rows, column: keys }, '1 2 3')).toThrow('cells do not fit')
  })
})
