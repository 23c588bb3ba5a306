import fc from 'fast-check'
import { mersenne } from 'pure-rand/generator/mersenne'
import { describe, expect, it } from 'vitest'
import type { Variable } from '../../src/study/assumptions.ts'
import { sharesFrom, stratified, valueAt } from '../../src/study/draw.ts'
import { proportionInterval } from '../../src/study/proportion-interval.ts'

describe('draws', () => {
  it('come from the Mersenne Twister: the 10,000th number of seed 5489 is the one that ISO C++ [rand.predef] prints (memory)', () => {
    const generator = mersenne(5489)
    let last = 0
    for (let count = 0; count < 10_000; count += 1) last = generator.next()
    expect(last >>> 0).toBe(4123659995)
  })

  it('are the same for one seed, others for another, and shares of 1', () => {
    const [a, b, c] = [sharesFrom(7), sharesFrom(7), sharesFrom(8)].map(shares => Array.from({ length: 500 }, shares))
    expect(a).toEqual(b)
    expect(a).not.toEqual(c)
    expect(a?.every(share => share >= 0 && share < 1)).toBe(true)
  })

  it('stratified: one in each of as many equal strata, in another order', () => {
    const column = stratified(1000, sharesFrom(3))
    expect([...column].map(share => Math.floor(share * 1000)).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 1000 }, (_, index) => index),
    )
    expect([...column]).not.toEqual([...column].sort((a, b) => a - b))
  })

  const over = (from: number, to: number) =>
    ({ range: { from, to } }) as Variable & { range: { from: number; to: number } }

  it('triangular: the value at a share leaves that share of the triangle below it, whatever the mode', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 2, noNaN: true }),
        (share, mode) => {
          const x = valueAt(over(0, 1), { share, spread: 'triangular', mode })
          const peak = Math.min(Math.max(mode, 0), 1)
          // Area of the triangle of height 2 below x.
          const below = x < peak ? x ** 2 / peak : 1 - (peak === 1 ? 0 : (1 - x) ** 2 / (1 - peak))
          expect(below).toBeCloseTo(share, 9)
        },
      ),
    )
  })

  it('uniform: even over the range', () => {
    expect(valueAt(over(2, 6), { share: 0.25, spread: 'uniform', mode: 5 })).toBe(3)
  })
})

describe('proportionInterval', () => {
  // R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3 (memory).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d: the interval that Newcombe prints', (hits, trials, low, high) => {
    const interval = proportionInterval(hits, trials)
    expect(Math.abs(interval.low - low)).toBeLessThanOrEqual(0.5e-4)
    expect(Math.abs(interval.high - high)).toBeLessThanOrEqual(0.5e-4)
    expect(interval.share).toBe(hits / trials)
  })

  it('is its own mirror, holds its share, and refuses what is no share', () => {
    fc.assert(
      fc.property(fc.nat(5000), fc.nat(5000), (hits, misses) => {
        fc.pre(hits + misses > 0)
        const a = proportionInterval(hits, hits + misses)
        const b = proportionInterval(misses, hits + misses)
        expect(a.low).toBeCloseTo(1 - b.high, 12)
        expect(a.low <= a.share && a.share <= a.high).toBe(true)
      }),
    )
    for (const [hits, trials] of [
      [0, 0],
      [3, 2],
      [-1, 4],
    ] as const)
      expect(() => proportionInterval(hits, trials)).toThrow(RangeError)
  })
})
