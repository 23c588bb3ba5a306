import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bishopRoot } from '../../../src/modules/ground/bishop-root.ts'
import { groundAt, slipThrough } from '../../../src/modules/ground/slip-circle.ts'
import { leastOfNet } from '../../../src/modules/ground/slip-net.ts'
import { worstSlip } from '../../../src/modules/ground/slip-search.ts'
import { type Asked, of, slopeWith, worstOf } from './slip-of.ts'

/** Upright slices of equal width, many of them, and Bishop's own iteration: nothing shared with the module but the circle. */
function byUprightSlices(
  asked: Asked,
  circle: { x: number; y: number; radius: number; out: number; into: number },
): number {
  const slope = slopeWith(asked)
  const { x, y, radius, out, into } = circle
  const count = 20_000
  const b = (into - out) / count
  let F = 1
  for (let round = 0; round < 200; round += 1) {
    let [holds, drives] = [0, 0]
    for (let i = 0; i < count; i += 1) {
      const at = out + (i + 0.5) * b
      const base = y - Math.sqrt(radius ** 2 - (at - x) ** 2)
      const sine = (at - x) / radius
      const top = groundAt(slope, at)
      const wet = Math.max(0, Math.min(top, slope.water) - base)
      const W = b * (slope.gamma * (top - base - wet) + slope.gammaSat * wet + (at > slope.loadFrom ? slope.load : 0))
      const U = slope.gammaW * wet * b
      holds +=
        (slope.cohesion * b + (W - U) * slope.friction) / (Math.sqrt(1 - sine ** 2) + (sine * slope.friction) / F)
      drives += W * sine
    }
    F = holds / drives
  }
  return F
}

describe('slips on a circle', () => {
  it("slope-circle: the root of Bishop's equation for one slice, by hand", () => {
    // strength / (cos + sin tan phi / F) = F shear, solved for F
    const [sine, cosine, friction] = [0.5, Math.sqrt(0.75), 0.6]
    expect(bishopRoot([{ sine, cosine, strength: 30 }], friction, 20)).toBeCloseTo(
      (30 / 20 - sine * friction) / cosine,
      8,
    )
    expect(bishopRoot([{ sine, cosine, strength: 30 * cosine }], 0, 20)).toBeCloseTo(1.5, 12)
    expect(bishopRoot([{ sine, cosine, strength: 30 }], friction, -1)).toBe(Number.POSITIVE_INFINITY)
    expect(bishopRoot([{ sine, cosine, strength: 1 }], friction, 20)).toBe(0)
  })

  it('slope-circle: a circle goes through its two places, above the hard ground and without hanging over', () => {
    const slope = slopeWith({ slope: 35, c: 5, phi: 30, hard: 2 })
    for (const [out, into] of [
      [-1, 20],
      [0, 15],
      [3, 9],
      [5, 30],
    ] as const)
      for (const share of [0.3, 0.6, 1]) {
        const slip = slipThrough(slope, { out, into, share })
        // From before the foot only a deep arc keeps below the ground.
        expect(slip === undefined).toBe(out < 0 && share < 0.5)
        if (!slip) continue
        for (const at of [out, into])
          expect(Math.hypot(at - slip.x, groundAt(slope, at) - slip.y)).toBeCloseTo(slip.radius, 8)
        expect(slip.y).toBeGreaterThanOrEqual(groundAt(slope, into) - 1e-9)
        if (slip.from < 0) expect(slip.y - slip.radius).toBeGreaterThanOrEqual(-2 - 1e-9)
      }
    // Nearly straight from before the foot, the arc would come out of the ground at the foot.
    expect(slipThrough(slope, { out: -1, into: 20, share: 0.01 })).toBeUndefined()
  })

  it('slope-circle: thin slices at equal angles are those of equal width', () => {
    const cases: readonly Asked[] = [
      { slope: 26.6, c: 3, phi: 19.6 },
      { slope: 40, c: 8, phi: 28, water: 5, gammaSat: 21e3, q: 15, loadFrom: 13 },
      { slope: 60, c: 40 },
    ]
    for (const asked of cases) {
      const slip = worstSlip(slopeWith(asked))?.slip
      if (!slip) throw new Error('no circle')
      // Beside an end that stands upright, slices of equal width lose some of the arc.
      expect(Math.abs(byUprightSlices(asked, slip) / worstOf(asked) - 1)).toBeLessThan(0.004)
    }
  })

  // D. W. Taylor, 1937 and 1948, friction nil: slope, depth factor, c / (F gamma H) (memory).
  it.each([
    [75, 1, 0.219],
    [60, 1, 0.191],
    [45, 1, 0.164],
    [45, 1.5, 0.174],
    [45, 2, 0.177],
    [30, 1, 0.133],
    [30, 1.5, 0.164],
    [30, 2, 0.172],
    [22.5, 1, 0.113],
    [22.5, 1.5, 0.153],
    [22.5, 2, 0.166],
    [15, 2, 0.15],
    [7.5, 1, 0.054],
    [7.5, 2, 0.107],
  ])(
    'slope-circle: clay at %d degrees over hard ground at depth factor %d has the stability number %d',
    (slope, D, N) => {
      const F = worstOf({ slope, c: 40, hard: 10 * (D - 1) })
      expect(Math.abs(40 / (20 * 10 * F) - N)).toBeLessThanOrEqual(0.001)
    },
  )

  it('slope-circle: a vertical cut in clay stands to 3.83 times strength over weight (Taylor 0.261, Fellenius; memory)', () => {
    expect(Math.abs(1 / worstOf({ slope: 89.999, c: 200, hard: 0 }) - 0.261)).toBeLessThanOrEqual(0.0005)
  })

  // The same with friction, by the friction circle: slope, angle of friction, number at a factor of 1 (memory).
  it.each([
    [45, 10, 0.108],
    [45, 20, 0.062],
    [45, 25, 0.044],
    [30, 15, 0.046],
    [30, 20, 0.025],
  ])(
    'slope-circle: at %d degrees with %d degrees of friction the number is %d within its last figure',
    (slope, phi, N) => {
      expect(worstOf({ slope, phi, c: 200 * (N - 0.001), hard: 0 })).toBeLessThan(1)
      expect(worstOf({ slope, phi, c: 200 * (N + 0.001), hard: 0 })).toBeGreaterThan(1)
    },
  )

  it('slope-circle: the factor is in proportion to the strength', () => {
    const F = worstOf({ slope: 40, c: 30 })
    expect(worstOf({ slope: 40, c: 60 })).toBeCloseTo(2 * F, 6)
    const phi = 20
    const half = worstOf({ slope: 35, c: 6, phi })
    const whole = worstOf({ slope: 35, c: 12, phi: (Math.atan(2 * Math.tan(of(phi))) * 180) / Math.PI })
    expect(whole / (2 * half)).toBeCloseTo(1, 3)
  })

  it('slope-circle: with hardly any cohesion the worst circle is a skin, as a long dry slope has it', () => {
    const skin = Math.tan(of(30)) / Math.tan(of(26))
    const factors = [1, 0.1, 0.01].map(c => worstOf({ slope: 26, phi: 30, c }))
    for (const F of factors) expect(F).toBeGreaterThan(skin)
    expect(factors).toEqual([...factors].sort((a, b) => b - a))
    expect((factors[2] ?? 0) / skin - 1).toBeLessThan(0.01)
  })

  it('slope-circle: water, a crack, water in it, load and depth of the ground never raise the factor', () => {
    const falls = (cases: readonly Asked[]): void => {
      const factors = cases.map(worstOf)
      for (const [at, F] of factors.entries()) expect(F).toBeLessThanOrEqual((factors[at - 1] ?? F) * 1.001)
      expect((factors.at(-1) ?? 1) / (factors[0] ?? 1)).toBeLessThan(0.99)
    }
    const wet = { slope: 30, c: 6, phi: 30, gammaSat: 21e3 }
    falls([-4, 0, 2, 4, 6, 8, 10].map(water => ({ ...wet, water })))
    falls([0, 0.1, 0.2, 0.4, 0.6].map(ratio => ({ ...wet, ratio })))
    falls([0, 1, 2, 3].map(crackWater => ({ ...wet, c: 20, crack: 3, crackWater })))
    falls([0, 10, 40, 80].map(q => ({ ...wet, q, loadFrom: 18 })))
    falls([30, 24, 20, 18].map(loadFrom => ({ ...wet, q: 40, loadFrom })))
    falls([0, 2, 5, 15].map(hard => ({ slope: 25, c: 30, hard })))
  })

  it('slope-circle: a load that steadies is not counted on', () => {
    // Over a level slope of clay a load on all of the crest drives; far back it stands behind the circle.
    expect(worstSlip(slopeWith({ slope: 20, c: 30, q: 20, loadFrom: 28 }))?.load).toBe(1)
    expect(worstSlip(slopeWith({ slope: 40, c: 3, phi: 35, q: 20, loadFrom: 30 }))?.load).toBe(0)
    expect(worstOf({ slope: 40, c: 3, phi: 35, q: 20, loadFrom: 30 })).toBe(worstOf({ slope: 40, c: 3, phi: 35 }))
  })

  it('slope-circle: circles by centre and radius find no worse one, for any slope', () => {
    const number = (least: number, most: number) => fc.integer({ min: least, max: most })
    fc.assert(
      fc.property(
        number(12, 70),
        number(0, 35),
        number(2, 40),
        number(-3, 10),
        number(0, 15),
        (slope, phi, c, water, hard) => {
          const asked = { slope, c, phi: phi < 8 ? 0 : phi, water, hard, gammaSat: 20.5e3 }
          expect(Math.abs(leastOfNet(slopeWith(asked)) / worstOf(asked) - 1)).toBeLessThan(0.01)
        },
      ),
      { numRuns: 15, seed: 5 },
    )
  })
})
