import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findRoot } from '../../../src/modules/numerics/find-root.ts'
import { NumericRefusal } from '../../../src/modules/numerics/numeric-refusal.ts'

describe('find root: known roots', () => {
  it.each([
    ['cos x = x, the Dottie number', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['x^3 = 2 x + 5, Wallis 1685', (x: number) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ['x e^x = 1, the omega constant', (x: number) => x * Math.exp(x) - 1, 0, 1, 0.5671432904097838],
    [
      'tan x = x, first after nil (NIST DLMF 4.19, memory)',
      (x: number) => Math.sin(x) - x * Math.cos(x),
      4,
      4.6,
      4.493409457909064,
    ],
  ])('%s', (_, f, from, to, root) => {
    const found = findRoot(f, { from, to })
    expect(Math.abs(found.root - root)).toBeLessThanOrEqual(2e-12)
    expect(Math.abs(found.residual)).toBeLessThanOrEqual(1e-11)
    expect(found.evaluations).toBeLessThanOrEqual(15)
  })

  // Colebrook at Re 1e5, roughness 1e-4 of the bore: 0.0185 on the Moody chart (memory).
  it('the friction factor of Colebrook and White', () => {
    const f = (x: number) => 1 / Math.sqrt(x) + 2 * Math.log10(1e-4 / 3.7 + 2.51 / (1e5 * Math.sqrt(x)))
    expect(findRoot(f, { from: 0.005, to: 0.1 }).root).toBeCloseTo(0.0185, 4)
  })

  it('a root at an end, and a bracket given backwards', () => {
    expect(findRoot(x => x - 3, { from: 3, to: 5 }).root).toBe(3)
    expect(findRoot(x => x - 3, { from: 1, to: 3 }).root).toBe(3)
    expect(findRoot(x => x * x - 2, { from: 2, to: 0 }).root).toBeCloseTo(Math.SQRT2, 11)
  })

  it('a flat root and a jump are bracketed; a jump shows in the residual', () => {
    expect(Math.abs(findRoot(x => (x - 1) ** 9, { from: 0, to: 3.1 }).root - 1)).toBeLessThanOrEqual(1e-9)
    const jump = findRoot(x => (x < 2 ? -1 : 1), { from: 0, to: 5 })
    expect(jump.bracket[0]).toBeLessThanOrEqual(2)
    expect(jump.bracket[1]).toBeGreaterThanOrEqual(2)
    expect(Math.abs(jump.residual)).toBe(1)
  })

  it('the bracket holds the root of any cubic with one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (root, b) => {
          const found = findRoot(x => (x - root) * ((x - root) ** 2 + b), { from: -10, to: 10.5, tolerance: 1e-9 })
          expect(Math.abs(found.root - root)).toBeLessThanOrEqual(b < 1e-6 ? 1e-7 : 1e-9)
          expect(found.bracket[0]).toBeLessThanOrEqual(root + 1e-7)
          expect(found.bracket[1]).toBeGreaterThanOrEqual(root - 1e-7)
        },
      ),
      { seed: 3 },
    )
  })
})

describe('find root: refusals', () => {
  it.each([
    [
      'no change of sign',
      () => findRoot(x => x * x + 1, { from: -1, to: 1 }),
      'Expected a change of sign between `from` and `to`, got 2 and 2',
    ],
    [
      'a value that is not finite',
      () => findRoot(x => 1 / x, { from: 0, to: 1 }),
      'Expected a finite number for `f`, got Infinity',
    ],
    ['an end that is not finite', () => findRoot(x => x, { from: Number.NaN, to: 1 }), '`tolerance`'],
    [
      'a tolerance of nil',
      () => findRoot(x => x, { from: -1, to: 1, tolerance: 0 }),
      'Expected `tolerance` above 0, got 0',
    ],
    [
      'too few evaluations',
      () => findRoot(x => Math.cos(x) - x, { from: 0, to: 1, most: 3 }),
      'Expected `most` enough evaluations to find the root, got 3',
    ],
  ])('%s', (_, run, message) => {
    expect(run).toThrow(NumericRefusal)
    expect(run).toThrow(message)
  })
})
