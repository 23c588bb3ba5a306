import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  dimensionless,
  dimensionOf,
  exponentOf,
  over,
  power,
  times,
  withinReach,
} from '../../src/quantity/dimension.ts'
import {
  add,
  divide,
  multiply,
  rational,
  rationalOfDecimal,
  rationalText,
  subtract,
} from '../../src/quantity/rational.ts'
import { bases, type Dimension } from '../../src/quantity/types.ts'

const fractions = fc
  .tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: 1, max: 12 }))
  .map(([n, d]) => rational(n, d))
const dimensions = fc
  .array(fractions, { minLength: 9, maxLength: 9 })
  .map(exponents => dimensionOf(Object.fromEntries(bases.map((base, i) => [base, exponents[i]!]))))

describe('rational', () => {
  test('rational: is kept in lowest terms with a positive denominator', () => {
    expect(rational(6, -4)).toEqual({ n: -3, d: 2 })
    expect(rational(0, 7)).toEqual({ n: 0, d: 1 })
    expect(Object.is(rational(0, -7).n, 0)).toBe(true)
  })

  test('rational: refuses a zero denominator and numbers that are not safe', () => {
    expect(() => rational(1, 0)).toThrow(RangeError)
    expect(() => rational(0.5, 1)).toThrow(RangeError)
    expect(() => rational(2 ** 53, 1)).toThrow(RangeError)
  })

  test('rational: a decimal is the decimal fraction it is written as', () => {
    expect(rationalOfDecimal('0.5')).toEqual({ n: 1, d: 2 })
    expect(rationalOfDecimal('0.333')).toEqual({ n: 333, d: 1000 })
    expect(rationalOfDecimal('-1.25')).toEqual({ n: -5, d: 4 })
    expect(rationalOfDecimal('.5')).toEqual({ n: 1, d: 2 })
    for (const text of ['', '.', '1e3', '0.1234567', 'x']) expect(rationalOfDecimal(text)).toBeUndefined()
  })

  test('rational: sums and products undo each other', () => {
    fc.assert(
      fc.property(fractions, fractions, (a, b) => {
        expect(subtract(add(a, b), b)).toEqual(a)
        if (b.n !== 0) expect(divide(multiply(a, b), b)).toEqual(a)
      }),
    )
  })
})

describe('dimension', () => {
  const isSame = (a: Dimension, b: Dimension): void => expect(a === b).toBe(true)

  test('dimension: equal dimensions are one object, however they are made', () => {
    const length = dimensionOf({ length: 1 })
    isSame(over(times(length, length), length), length)
    isSame(power(power(length, rational(1, 2)), rational(2)), length)
    isSame(over(length, length), dimensionless)
    expect(dimensionOf({ length: 1 }) === dimensionOf({ mass: 1 })).toBe(false)
  })

  test('dimension: products and powers obey their laws', () => {
    fc.assert(
      fc.property(dimensions, dimensions, fractions, (a, b, k) => {
        isSame(times(a, b), times(b, a))
        isSame(over(times(a, b), b), a)
        isSame(power(times(a, b), k), times(power(a, k), power(b, k)))
      }),
    )
  })

  test('dimension: dose equivalent and persons are bases of their own', () => {
    expect(bases).toContain('dose')
    expect(dimensionOf({ dose: 1 }) === dimensionOf({ length: 2, time: -2 })).toBe(false)
    expect(rationalText(exponentOf(dimensionOf({ person: -1 }), 'person'))).toBe('-1')
  })

  test('dimension: exponents past 64 or too fine are out of reach', () => {
    expect(withinReach(dimensionOf({ length: 64 }))).toBe(true)
    expect(withinReach(dimensionOf({ length: 65 }))).toBe(false)
    expect(withinReach(dimensionOf({ length: rational(1, 1000) }))).toBe(true)
    expect(withinReach(dimensionOf({ length: rational(1, 1001) }))).toBe(false)
  })
})
