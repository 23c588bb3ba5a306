import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exponentialIntegral } from '../../../src/modules/numerics/exponential-integral.ts'
import { integrate } from '../../../src/modules/numerics/integrate.ts'
import { publishedTable } from './published-table.ts'

const near = (ours: number, printed: number, relative: number) =>
  expect(Math.abs(ours - printed)).toBeLessThanOrEqual(relative * Math.abs(printed))

describe('exponentialIntegral', () => {
  // Abramowitz and Stegun, AMS 55, Table 5.1 (memory)
  it.each([
    [1, 0.219383934],
    [0.5, 0.559773595],
    [2, 0.048900511],
  ])('E1(%d) is as printed in AMS 55, Table 5.1', (x, printed) => {
    expect(Math.abs(exponentialIntegral(x) - printed)).toBeLessThanOrEqual(5e-10)
  })

  // computed with 50 digits, 12 kept
  it.each(publishedTable('shielding-expint').map(({ x, E1, E2 }) => [Number(x), Number(E1), Number(E2)] as const))(
    'E1(%d) and E2 by its recurrence have the digits of the table',
    (x, first, second) => {
      near(exponentialIntegral(x), first, 1e-11)
      // the difference loses the leading digits of E2, as many as x E1 is larger than it
      const lost = Math.exp(-x) / second
      near(Math.exp(-x) - x * exponentialIntegral(x), second, 1e-11 * Math.max(1, lost))
    },
  )

  it('equals the integral it stands for, wherever it begins', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 30, noNaN: true }), x => {
        const { value } = integrate(t => Math.exp(-t) / t, { from: x, to: x + 40 })
        near(exponentialIntegral(x), value, 1e-9)
      }),
      { numRuns: 30 },
    )
  })

  it('runs on from series to fraction without a step', () => {
    near(exponentialIntegral(1), exponentialIntegral(1 + 1e-12), 1e-11)
  })

  it('is 0 so deep that nothing is left', () => {
    expect(exponentialIntegral(800)).toBe(0)
  })

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', x => {
    expect(() => exponentialIntegral(x)).toThrow(/`x`/)
  })
})

// Plane source: half the integral of B(x) exp(-x)/x from b on (computed, numerically over the plane)
describe('exponentialIntegral: fluence behind a plane source', () => {
  it.each([
    [0.5, 0.2798868],
    [1, 0.109692],
    [3, 6.524191e-3],
    [6, 1.800412e-4],
  ])('without build-up at %d mean free paths', (b, printed) => {
    near(exponentialIntegral(b) / 2, printed, 1e-6)
  })

  it('with build-up 1 + x at 2 mean free paths', () => {
    near((exponentialIntegral(2) + Math.exp(-2)) / 2, 0.0921179, 1e-6)
  })

  it('with a Taylor build-up of A 10, -0.09 and 0.03 at 4 mean free paths', () => {
    near((10 * exponentialIntegral(0.91 * 4) - 9 * exponentialIntegral(1.03 * 4)) / 2, 0.01461154, 1e-6)
  })

  it('open air at 1 MeV with the Berger form 1.1 and 0.08, and the factor of 300 mm of concrete under it', () => {
    const berger = (b: number, C: number, D: number) =>
      (exponentialIntegral(b) + (C / (1 - D)) * Math.exp(-(1 - D) * b)) / 2
    const open = berger(0.06358 * 1.205e-3 * 100, 1.1, 0.08)
    near(open, 2.744624, 1e-6)
    near(berger(4.48155, 1.0278, 0.0661), 9.433426e-3, 1e-4)
    near(open / berger(4.48155, 1.0278, 0.0661), 290.95, 1e-3)
  })
})
