import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  digitsOf,
  figuresOf,
  lastPlace,
  plainNumber,
  spokenNumber,
  texNumber,
  thinSpace,
  typedDigits,
} from '../../src/quantity/number-print.ts'
import { fromUnit, inUnit } from '../../src/quantity/to-unit.ts'
import { unitOf } from '../../src/quantity/unit.ts'
import { unitNames } from '../../src/quantity/units.ts'

describe('digitsOf', () => {
  test.each([
    [2.675, 3, '2.68'],
    [1.005, 3, '1.01'],
    [-2.675, 3, '-2.68'],
    [8.345, 3, '8.35'],
    [0.1 + 0.2, 4, '0.3000'],
    [12 * 0.0254, 4, '0.3048'],
    [9.9996, 4, '10.00'],
    [99.995, 4, '100.0'],
    [9999.5, 4, '10000'],
    [12504, 4, '12500'],
    [12505, 4, '12510'],
    [123456, 4, '123500'],
    [0.00046, 3, '0.000460'],
    [1e-4, 4, '0.0001000'],
    [0.99995e-4, 4, '0.0001000'],
    [9.9994e-5, 4, '9.999e-5'],
    [1.2e-6, 2, '1.2e-6'],
    [9_999_499, 4, '9999000'],
    [9_999_500, 4, '1.000e7'],
    [1.2345e7, 4, '1.235e7'],
    [-0, 4, '0'],
    [0, 4, '0'],
    [5, 1, '5'],
    [0.5, 1, '0.5'],
    [1e22, 4, '1.000e22'],
    [5e-324, 3, '4.94e-324'],
  ])('digitsOf: %d to %d figures is %s', (value, figures, digits) => {
    expect(digitsOf(value, figures)).toBe(digits)
  })

  test('digitsOf: refuses what is not finite', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(() => digitsOf(value, 4)).toThrow(RangeError)
  })

  test('digitsOf: differs from the value by at most half a unit in its last place', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }),
        fc.integer({ min: 1, max: 12 }),
        (value, figures) => {
          fc.pre(Math.abs(value) > 1e-12)
          const digits = digitsOf(value, figures)
          const half = lastPlace(digits, figures) / 2
          expect(Math.abs(Number(digits) - value)).toBeLessThanOrEqual(half * (1 + 1e-6))
          expect(digits).toMatch(/^-?\d+(\.\d+)?(e-?\d+)?$/)
        },
      ),
    )
  })

  test('digitsOf: a typed number comes back as it was typed, through any unit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom(...unitNames),
        (n, decimals, name) => {
          const typed = (n / 10 ** decimals).toFixed(decimals)
          const unit = unitOf(name)
          const back = inUnit(fromUnit(Number(typed), unit), unit)
          const figures = figuresOf(typed)
          // A temperature point loses the last bits of a small number to its offset
          fc.pre(unit.offset === undefined || figures <= 5)
          expect(Number(digitsOf(back, Math.max(1, Math.min(figures, 12))))).toBe(Number(typed))
        },
      ),
    )
  })
})

describe('lastPlace', () => {
  test.each([
    ['3.400', undefined, 0.001],
    ['12500', undefined, 1],
    ['12500', 4, 10],
    ['123500', 4, 100],
    ['10.00', 4, 0.01],
    ['1.235e7', 4, 1e4],
    ['1.2e-6', 2, 1e-7],
    ['-26.08', 4, 0.01],
    ['5', 1, 1],
    ['0', 4, 1],
  ])('lastPlace: of %s with figures %s is %d', (digits, figures, place) => {
    expect(lastPlace(digits, figures)).toBe(place)
  })

  test('figuresOf: counts what is shown', () => {
    expect(['3.400', '0.000460', '12500', '1.2e-6', '-26.08', '0', '10'].map(figuresOf)).toEqual([4, 3, 5, 2, 4, 1, 2])
  })
})

describe('numbers for print', () => {
  test.each([
    ['-26.08', '−26.08', '-26.08', 'minus 26.08'],
    ['1234', '1234', '1234', '1234'],
    ['12500', `12${thinSpace}500`, '12\\,500', '12500'],
    ['1234567.25', `1${thinSpace}234${thinSpace}567.25`, '1\\,234\\,567.25', '1234567.25'],
    ['0.000123', '0.000123', '0.000123', '0.000123'],
    ['1.2e-6', '1.2×10⁻⁶', '{1.2 \\times 10^{-6}}', '1.2 times 10 to the minus 6'],
    ['-3.5e12', '−3.5×10¹²', '{-3.5 \\times 10^{12}}', 'minus 3.5 times 10 to the 12'],
  ])('numbers: %s as text, TeX and words', (digits, plain, tex, spoken) => {
    expect([plainNumber(digits), texNumber(digits), spokenNumber(digits)]).toEqual([plain, tex, spoken])
  })

  test.each([
    ['.5', '0.5'],
    ['5.', '5'],
    ['1E3', '1e3'],
    ['1.20e-06', '1.20e-6'],
    ['1e+3', '1e3'],
    ['3.40', '3.40'],
    ['-5', '-5'],
    ['−5', '-5'],
    ['-.5', '-0.5'],
    ['0', '0'],
    ['0.00', '0.00'],
  ])('typedDigits: %s keeps its digits as %s', (typed, digits) => {
    expect(typedDigits(typed)).toBe(digits)
  })
})
