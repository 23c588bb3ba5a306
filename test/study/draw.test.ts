import fc from 'fast-check'
import { erf } from 'mathjs'
import { mersenne } from 'pure-rand/generator/mersenne'
import { describe, expect, it } from 'vitest'
import type { Variable } from '../../src/study/assumptions.ts'
import { beyondNought, normalOver, sharesFrom, stratified, valueAt } from '../../src/study/draw.ts'
import { normalQuantile } from '../../src/study/normal-quantile.ts'
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

  // GUM (JCGM 100:2008), 4.3.4: an interval of 90, 95, 99 % is ± 1.64, 1.96, 2.58 standard uncertainties; 4.3.5: of 50 %, u = 1.48 a (memory).
  it('normal: the range is the coverage interval that the GUM makes of it, about its middle', () => {
    const deviations = [0.9, 0.95, 0.99].map(coverage => 1 / normalOver({ from: 4, to: 6 }, coverage).deviation)
    expect(deviations.map(each => each.toFixed(2))).toEqual(['1.64', '1.96', '2.58'])
    expect(normalOver({ from: 4, to: 6 }, 0.5).deviation.toFixed(2)).toBe('1.48')
    expect(normalOver({ from: 4, to: 6 }, 0.9).mean).toBe(5)
    const at = (share: number, mode = 5.5) => valueAt(over(4, 6), { share, spread: 'normal', mode, coverage: 0.95 })
    expect([at(0.025), at(0.5), at(0.975)].map(each => each.toFixed(9))).toEqual([
      '4.000000000',
      '5.000000000',
      '6.000000000',
    ])
    expect(at(0.5, 4)).toBe(5)
    expect(Number.isFinite(at(0)) && at(0) < 4).toBe(true)
  })

  it('normal: says how much lies on the other side of nought, and nothing where the range has both sides or is far from it', () => {
    expect(beyondNought({ from: 0, to: 5 }, 0.95)).toBeCloseTo(0.025, 9)
    expect(beyondNought({ from: -5, to: 0 }, 0.9)).toBeCloseTo(0.05, 9)
    // Mean 2, deviation 1 / 1.959964: Φ(-3.9199) = 4.43e-5.
    expect(beyondNought({ from: 1, to: 3 }, 0.95)).toBeCloseTo(4.43e-5, 7)
    for (const [from, to] of [
      [-1, 5],
      [100, 101],
      [0, 0],
      [3, 3],
    ] as const)
      expect(beyondNought({ from, to }, 0.95)).toBe(0)
  })
})

describe('normalQuantile', () => {
  // Wichura, Appl. Stat. 37 (1988) 477: the values by which an implementation of PPND16 is to be checked (memory).
  it.each([
    ['0.25', '-0.6744897501960817'],
    ['0.001', '-3.090232306167814'],
    ['1e-20', '-9.262340089798408'],
  ])('AS 241: below the deviate of %s lies that share', (share, deviate) => {
    expect(Math.abs(normalQuantile(Number(share)) / Number(deviate) - 1)).toBeLessThan(5e-16)
  })

  it('goes back through the error function of mathjs, and is its own mirror', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), share => {
        expect((1 + erf(normalQuantile(share) / Math.SQRT2)) / 2).toBeCloseTo(share, 12)
      }),
    )
    for (const share of [0.5, 0.3, 0.05, 2 ** -12])
      expect(normalQuantile(1 - share)).toBeCloseTo(-normalQuantile(share), 12)
    for (const share of [0, 1, -1, Number.NaN]) expect(() => normalQuantile(share)).toThrow(RangeError)
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
