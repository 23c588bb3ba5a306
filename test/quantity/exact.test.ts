import { describe, expect, it } from 'vitest'
import { exactOf, nearest } from '../../src/quantity/exact.ts'
import { ceilOf, floorOf } from '../../src/quantity/tolerance.ts'
import { readUnit } from '../../src/quantity/unit.ts'

describe('exact numbers', () => {
  it('exact: the nearest double is one rounding away, though what tips it stands far behind the point', () => {
    const whole = 2n ** 200n
    const half = whole / 2n ** 53n
    expect(nearest({ n: whole + half, d: whole, pi: 0 })).toBe(1)
    expect(nearest({ n: whole + half + 1n, d: whole, pi: 0 })).toBe(1 + Number.EPSILON)
    expect(nearest({ n: whole + half - 1n, d: whole, pi: 0 })).toBe(1)
  })

  it('exact: refuses what is no plain number', () => {
    for (const text of ['', '1 / 2', '-1', 'two', '1e', '.5']) expect(() => exactOf(text), text).toThrow(SyntaxError)
  })

  it('exact: a unit must be of a size that can be calculated with', () => {
    expect(readUnit('um^12*um^12').ok).toBe(true)
    expect(readUnit('um^12*um^12*um^3')).toMatchObject({
      ok: false,
      fault: { says: expect.stringContaining('too small') },
    })
    expect(readUnit('1/(um^12*um^12*um^3)').ok).toBe(false)
  })
})

describe('whole numbers', () => {
  it('tolerance: a number counts as the whole one beside it within a billionth, and a great one within a millionth', () => {
    expect([floorOf(2.9999999999), floorOf(2.99999999)]).toEqual([3, 2])
    expect([ceilOf(3.0000000001), ceilOf(3.00000001)]).toEqual([3, 4])
    expect([floorOf(5_000_000.999_999_5), floorOf(5_000_000.999_99)]).toEqual([5_000_001, 5_000_000])
  })
})
