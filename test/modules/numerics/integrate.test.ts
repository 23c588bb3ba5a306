import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gaussLegendre } from '../../../src/modules/numerics/gauss-legendre.ts'
import { integrate } from '../../../src/modules/numerics/integrate.ts'
import { integrateCells } from '../../../src/modules/numerics/integrate-cells.ts'
import { NumericRefusal } from '../../../src/modules/numerics/numeric-refusal.ts'

describe('integrate: known integrals', () => {
  it.each([
    ['sin over half a turn', Math.sin, 0, Math.PI, 2],
    ['4/(1 + x^2)', (x: number) => 4 / (1 + x * x), 0, 1, Math.PI],
    ['square root, steep at its end', Math.sqrt, 0, 1, 2 / 3],
    ['a kink', (x: number) => Math.abs(x - 0.3), 0, 1, 0.29],
    ['a narrow peak', (x: number) => 1 / ((x - 0.4) ** 2 + 1e-4), 0, 1, 100 * (Math.atan(60) + Math.atan(40))],
    [
      'E1(1) - E1(20): 0.2193839343955203 (Abramowitz and Stegun Table 5.1)',
      (x: number) => Math.exp(-x) / x,
      1,
      20,
      0.2193839343955203 - 9.8355252906e-11,
    ],
    ['backwards', Math.exp, 1, 0, 1 - Math.E],
  ])('%s', (_, f, from, to, value) => {
    const found = integrate(f, { from, to })
    expect(Math.abs(found.value - value)).toBeLessThanOrEqual(1e-10 * Math.abs(value))
    expect(Math.abs(found.value - value)).toBeLessThanOrEqual(found.error + 1e-15)
  })

  it('the pair is exact to degree 22: its nodes and weights are right', () => {
    for (let degree = 0; degree <= 22; degree++) {
      const { value, evaluations } = integrate(x => x ** degree, { from: 0, to: 1, relative: 1 })
      expect(evaluations).toBe(15)
      expect(value).toBeCloseTo(1 / (degree + 1), 14)
    }
  })

  it('counts its evaluations', () => {
    let asked = 0
    const f = (x: number) => {
      asked += 1
      return Math.sqrt(x)
    }
    expect(integrate(f, { from: 0, to: 1 }).evaluations).toBe(asked)
  })

  it('an empty range and a nil function give 0', () => {
    expect(integrate(Math.exp, { from: 2, to: 2 }).value).toBe(0)
    expect(integrate(() => 0, { from: 0, to: 1 }).value).toBe(0)
  })

  it('parts add up', () => {
    const place = fc.double({ min: -3, max: 3, noNaN: true })
    const f = (x: number) => Math.exp(-x * x) * Math.cos(3 * x)
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        const part = (from: number, to: number) => integrate(f, { from, to, absolute: 1e-12 }).value
        expect(part(a, b) + part(b, c)).toBeCloseTo(part(a, c), 10)
      }),
    )
  })

  it.each([
    ['a pole', () => integrate(x => 1 / x, { from: 0, to: 1 }), '`most`'],
    [
      'a value that is not finite',
      () => integrate(x => Math.log(x - 1), { from: 0, to: 1 }),
      'Expected a finite number for `f`, got NaN',
    ],
    ['an end that is not finite', () => integrate(Math.exp, { from: 0, to: Number.POSITIVE_INFINITY }), '`to`'],
    ['a tolerance below 0', () => integrate(Math.exp, { from: 0, to: 1, relative: -1 }), 'tolerances'],
  ])('refuses %s', (_, run, message) => {
    expect(run).toThrow(NumericRefusal)
    expect(run).toThrow(message)
  })
})

describe('integrate cells: plain rules', () => {
  it('the trapezoid is exact for a straight line, Simpson for a cubic', () => {
    expect(integrateCells(x => 3 * x + 1, { from: 1, to: 4, cells: 7, rule: 'trapezoid' }).value).toBeCloseTo(25.5, 12)
    expect(integrateCells(x => x ** 3, { from: 0, to: 2, cells: 1, rule: 'simpson' }).value).toBeCloseTo(4, 12)
  })

  it('the parts are the layers, end to end, and add up to the value', () => {
    const { parts, value } = integrateCells(Math.exp, { from: 0, to: 1, cells: 10, rule: 'simpson' })
    expect(parts).toHaveLength(10)
    expect(parts[0]?.from).toBe(0)
    expect(parts[9]?.to).toBe(1)
    expect(parts.slice(1).every((part, i) => part.from === parts[i]?.to)).toBe(true)
    expect(parts.reduce((sum, part) => sum + part.value, 0)).toBe(value)
  })

  it.each([
    ['trapezoid', 4],
    ['simpson', 16],
  ] as const)('%s: halving the cell divides the error by %d', (rule, by) => {
    const run = (cells: number) => integrateCells(Math.exp, { from: 0, to: 1, cells, rule })
    const error = (cells: number) => Math.abs(run(cells).value - (Math.E - 1))
    expect(error(8) / error(16)).toBeGreaterThan(0.97 * by)
    expect(error(8) / error(16)).toBeLessThan(1.03 * by)
    expect(run(16).error! / error(16)).toBeGreaterThan(0.9)
    expect(run(16).error! / error(16)).toBeLessThan(1.1)
    expect(run(7).error).toBeUndefined()
  })

  it.each([0, 1.5, -2, 100_001])('refuses %d cells', cells => {
    expect(() => integrateCells(Math.exp, { from: 0, to: 1, cells, rule: 'simpson' })).toThrow(
      'Expected a whole number from 1 to 100000 for `cells`',
    )
  })
})

describe('gauss legendre: rules', () => {
  // Abramowitz and Stegun Table 25.4 (memory).
  it('three places: 0.774596669241483 with 5/9, 0 with 8/9', () => {
    const { places, weights } = gaussLegendre(3)
    expect(places).toEqual([-0.774596669241483, 0, 0.774596669241483].map(s => expect.closeTo(s, 14)))
    expect(weights).toEqual([5 / 9, 8 / 9, 5 / 9].map(w => expect.closeTo(w, 14)))
  })

  it('n places are exact to degree 2 n - 1', () => {
    for (const count of [1, 2, 5, 16, 40]) {
      const { places, weights } = gaussLegendre(count)
      for (let degree = 0; degree < 2 * count; degree++) {
        const sum = places.reduce((total, s, i) => total + weights[i]! * s ** degree, 0)
        expect(sum).toBeCloseTo(degree % 2 === 1 ? 0 : 2 / (degree + 1), 13)
      }
    }
  })

  it.each([0, 201, 2.5])('refuses %d places', count => {
    expect(() => gaussLegendre(count)).toThrow('for `count`')
  })
})
