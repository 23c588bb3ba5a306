import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beam } from '../../../src/modules/numerics/beam.ts'
import { type BeamEnd, type BeamSpan, beamActionsAt } from '../../../src/modules/numerics/beam-solution.ts'
import type { LineLoad } from '../../../src/modules/numerics/line-load.ts'
import { NumericRefusal } from '../../../src/modules/numerics/numeric-refusal.ts'
import { anySpan } from './any-span.ts'

/** A wall of height `h`, x = 0 at the top: uniform pressure `u`, and triangular, nil at the top and `t` at the base. */
function wall(h: number, [top, base]: readonly [BeamEnd, BeamEnd], [u, t]: readonly [number, number]): BeamSpan {
  return {
    length: h,
    start: top,
    end: base,
    load: [
      [0, u],
      [h, u + t],
    ],
  }
}

function near(got: number, expected: number, percent: number): void {
  expect(Math.abs(got - expected)).toBeLessThanOrEqual((percent / 100) * Math.abs(expected) + 1e-12)
}

// Published check values for a wall strip (computed there; standard beam tables), p = 1 and H = 1.
describe('beam: table of wall strips', () => {
  const third = 1 / 3
  it.each([
    { top: 'pinned', base: 'pinned', load: [1, 0], mBase: 0, mTop: 0, span: 1 / 8, at: 0.5, rBase: 0.5, rTop: 0.5 },
    {
      top: 'pinned',
      base: 'pinned',
      load: [0, 1],
      mBase: 0,
      mTop: 0,
      span: 1 / (9 * Math.sqrt(3)),
      at: Math.sqrt(third),
      rBase: third,
      rTop: 1 / 6,
    },
    {
      top: 'pinned',
      base: 'fixed',
      load: [1, 0],
      mBase: -1 / 8,
      mTop: 0,
      span: 9 / 128,
      at: 0.375,
      rBase: 5 / 8,
      rTop: 3 / 8,
    },
    {
      top: 'pinned',
      base: 'fixed',
      load: [0, 1],
      mBase: -1 / 15,
      mTop: 0,
      span: 0.02981,
      at: 0.4472,
      rBase: 2 / 5,
      rTop: 1 / 10,
    },
    {
      top: 'fixed',
      base: 'fixed',
      load: [1, 0],
      mBase: -1 / 12,
      mTop: -1 / 12,
      span: 1 / 24,
      at: 0.5,
      rBase: 0.5,
      rTop: 0.5,
    },
    {
      top: 'fixed',
      base: 'fixed',
      load: [0, 1],
      mBase: -1 / 20,
      mTop: -1 / 30,
      span: 0.02144,
      at: 0.5477,
      rBase: 7 / 20,
      rTop: 3 / 20,
    },
    { top: 'free', base: 'fixed', load: [1, 0], mBase: -1 / 2, mTop: 0, span: 0, at: 0, rBase: 1, rTop: 0 },
    { top: 'free', base: 'fixed', load: [0, 1], mBase: -1 / 6, mTop: 0, span: 0, at: 0, rBase: 0.5, rTop: 0 },
  ] as const)('base $base, top $top, load $load', ({ top, base, load, mBase, mTop, span, at, rBase, rTop }) => {
    const result = beam(wall(1, [top, base], load))
    expect(result.end.moment).toBeCloseTo(mBase, 12)
    expect(result.start.moment).toBeCloseTo(mTop, 12)
    expect(Math.abs(result.sagging.moment - span)).toBeLessThanOrEqual(0.000005)
    expect(Math.abs(result.sagging.at - at)).toBeLessThanOrEqual(0.00005)
    expect(result.end.reaction).toBeCloseTo(rBase, 12)
    expect(result.start.reaction).toBeCloseTo(rTop, 12)
  })

  it('turned end for end it is the same beam', () => {
    const { start, end, sagging } = beam({
      length: 1,
      start: 'fixed',
      end: 'pinned',
      load: [
        [0, 1],
        [1, 0],
      ],
    })
    expect(start.moment).toBeCloseTo(-1 / 15, 12)
    expect(end.reaction).toBeCloseTo(1 / 10, 12)
    expect(Math.abs(sagging.at - 0.5528)).toBeLessThanOrEqual(0.00005)
  })
})

describe('beam: worked wall strips', () => {
  it('strip-1: H 3 m, triangular 30 kPa, fixed base, pinned top', () => {
    const { start, end, sagging } = beam(wall(3, ['pinned', 'fixed'], [0, 30]))
    near(end.moment, -18, 0.2)
    near(sagging.moment, 8.05, 0.2)
    near(end.reaction, 36, 0.2)
    near(start.reaction, 9, 0.2)
  })

  it('strip-2: H 3 m, triangular 30 kPa, pinned both', () => {
    const { start, end, sagging } = beam(wall(3, ['pinned', 'pinned'], [0, 30]))
    near(sagging.moment, 17.32, 0.2)
    near(sagging.at, 1.732, 0.2)
    near(end.reaction, 30, 0.2)
    near(start.reaction, 15, 0.2)
  })

  it('strip-3: H 2.5 m, uniform 10 and triangular 25 kPa, fixed both', () => {
    const { start, end } = beam(wall(2.5, ['fixed', 'fixed'], [10, 25]))
    near(end.moment, -13.02, 0.2)
    near(start.moment, -10.42, 0.2)
    near(end.reaction, 34.375, 0.2)
    near(start.reaction, 21.875, 0.2)
  })

  it('strip-4: H 2 m, triangular 20 kPa, cantilever', () => {
    const { end, hogging } = beam(wall(2, ['free', 'fixed'], [0, 20]))
    near(end.moment, -13.33, 0.1)
    near(end.reaction, 20, 0.1)
    expect(hogging.at).toBe(2)
  })
})

// Single spans of a one-way slab (standard, computed there): w = 12, l = 4.
describe('beam: single spans of a one-way slab', () => {
  const solve = (start: BeamEnd, end: BeamEnd) =>
    beam({
      length: 4,
      start,
      end,
      load: [
        [0, 12],
        [4, 12],
      ],
    })
  it('simple: w l^2/8', () => {
    expect(solve('pinned', 'pinned').sagging).toEqual({ moment: expect.closeTo(24, 10), at: expect.closeTo(2, 10) })
  })

  it('propped: support w l^2/8, span 9 w l^2/128 at 3/8 l from the prop, reactions 3/8 and 5/8', () => {
    const { start, end, sagging, zeroShear } = solve('pinned', 'fixed')
    expect(end.moment).toBeCloseTo(-24, 10)
    expect(sagging.moment).toBeCloseTo(13.5, 10)
    expect(sagging.at).toBeCloseTo(1.5, 10)
    expect(zeroShear).toEqual([expect.closeTo(1.5, 10)])
    expect([start.reaction, end.reaction]).toEqual([expect.closeTo(18, 10), expect.closeTo(30, 10)])
  })

  it('fixed: w l^2/12 and w l^2/24', () => {
    const { start, end, sagging, hogging } = solve('fixed', 'fixed')
    expect([start.moment, end.moment, hogging.moment]).toEqual([-16, -16, -16].map(m => expect.closeTo(m, 10)))
    expect(sagging.moment).toBeCloseTo(8, 10)
  })

  it('cantilever: w l^2/2', () => {
    expect(solve('fixed', 'free').start.moment).toBeCloseTo(-96, 10)
  })
})

// Deflections of the standard tables, EI = 1 (memory): 5 w l^4/384, w l^4/185 (at 0.4215 l), w l^4/384, w l^4/8.
describe('beam: deflections', () => {
  const at = (start: BeamEnd, end: BeamEnd, x: number) => {
    return beamActionsAt(
      beam({
        length: 1,
        start,
        end,
        load: [
          [0, 1],
          [1, 1],
        ],
      }).solution,
      x,
    ).deflection
  }
  it('of the four standard spans under a uniform load', () => {
    expect(at('pinned', 'pinned', 0.5)).toBeCloseTo(5 / 384, 12)
    expect(at('fixed', 'fixed', 0.5)).toBeCloseTo(1 / 384, 12)
    expect(at('free', 'fixed', 0)).toBeCloseTo(1 / 8, 12)
    expect(at('fixed', 'free', 1)).toBeCloseTo(1 / 8, 12)
    expect(Math.round(1 / at('pinned', 'fixed', 0.4215))).toBe(185)
  })
})

describe('beam: loads with jumps and gaps', () => {
  it('a load over the middle half of a simple span: flat moments do not hide the zero shear', () => {
    const { zeroShear, sagging } = beam({
      length: 4,
      start: 'pinned',
      end: 'pinned',
      load: [
        [1, 2],
        [3, 2],
      ],
    })
    expect(zeroShear).toEqual([expect.closeTo(2, 12)])
    expect(sagging.moment).toBeCloseTo(3, 12)
  })

  it('two equal patches: the shear is nil all along the gap', () => {
    const load: LineLoad = [
      [0, 3],
      [1, 3],
      [1, 0],
      [3, 0],
      [3, 3],
      [4, 3],
    ]
    const { zeroShear, sagging } = beam({ length: 4, start: 'pinned', end: 'pinned', load })
    expect(zeroShear).toEqual([expect.closeTo(1, 12), expect.closeTo(3, 12)])
    expect(sagging.moment).toBeCloseTo(1.5, 12)
  })

  it('a jump at mid-span: partial uniform load, w a^2 (2 l - a)^2/(8 l^2) (memory)', () => {
    const { sagging } = beam({
      length: 5,
      start: 'pinned',
      end: 'pinned',
      load: [
        [0, 4],
        [2, 4],
      ],
    })
    expect(sagging.moment).toBeCloseTo((4 * 4 * 64) / 200, 12)
  })

  it('a load that turns sign may have two zero-shear places and hog in the span', () => {
    const { zeroShear, hogging } = beam({
      length: 2,
      start: 'pinned',
      end: 'pinned',
      load: [
        [0, 1],
        [2, -1],
      ],
    })
    expect(zeroShear).toHaveLength(2)
    expect(hogging.moment).toBeLessThan(0)
  })
})

describe('beam: equilibrium and the end conditions', () => {
  const runs = { numRuns: 300, seed: 7 }
  it('reactions carry the load, and moments balance about the end', () => {
    fc.assert(
      fc.property(anySpan, span => {
        const { start, end, solution } = beam(span)
        const { stretches } = solution
        const sum = (of: (mean: number, arm: number) => number) => {
          return stretches.reduce((total, { start: a, end: b, atStart: p, atEnd: q }) => {
            const force = ((p + q) / 2) * (b - a)
            const centre = p + q === 0 ? (a + b) / 2 : a + ((b - a) * (p + 2 * q)) / (3 * (p + q))
            return total + of(force, span.length - centre)
          }, 0)
        }
        const load = sum(force => force)
        const turning = sum((force, arm) => force * arm)
        expect(Math.abs(start.reaction + end.reaction - load)).toBeLessThanOrEqual(1e-9 * load)
        const balance = start.moment + start.reaction * span.length - turning - end.moment
        expect(Math.abs(balance)).toBeLessThanOrEqual(1e-9 * load * span.length)
      }),
      runs,
    )
  })

  it('ends do not move where they are held', () => {
    fc.assert(
      fc.property(anySpan, span => {
        const { solution, start } = beam(span)
        const size = Math.max(1, ...span.load.map(([, p]) => p)) * span.length ** 4
        const [first, last] = [beamActionsAt(solution, 0), beamActionsAt(solution, span.length)]
        for (const [kind, at] of [
          [span.start, first],
          [span.end, last],
        ] as const) {
          if (kind !== 'free') expect(Math.abs(at.deflection)).toBeLessThanOrEqual(1e-10 * size)
          if (kind === 'fixed') expect(Math.abs(at.slope)).toBeLessThanOrEqual((1e-10 * size) / span.length)
          if (kind !== 'fixed') expect(Math.abs(at.moment)).toBeLessThanOrEqual((1e-10 * size) / span.length ** 2)
        }
        expect(start.moment).toBe(first.moment)
      }),
      runs,
    )
  })

  it('no place has a greater moment than the one reported, and the shear is nil where it is', () => {
    fc.assert(
      fc.property(anySpan, span => {
        const { solution, sagging, hogging, zeroShear } = beam(span)
        const size = solution.stretches.reduce((sum, s) => sum + Math.max(s.atStart, s.atEnd) * (s.end - s.start), 0)
        for (let i = 0; i <= 50; i++) {
          const { moment } = beamActionsAt(solution, (span.length * i) / 50)
          expect(moment).toBeLessThanOrEqual(sagging.moment + 1e-9 * size * span.length)
          expect(moment).toBeGreaterThanOrEqual(hogging.moment - 1e-9 * size * span.length)
        }
        for (const at of zeroShear) expect(Math.abs(beamActionsAt(solution, at).shear)).toBeLessThanOrEqual(1e-9 * size)
      }),
      runs,
    )
  })

  it('propped equals fixed with the moment of the released end carried over', () => {
    const load: LineLoad = [
      [0, 5],
      [1.2, 9],
      [1.2, 14],
      [3, 22],
    ]
    const fixed = beam({ length: 3, start: 'fixed', end: 'fixed', load })
    const propped = beam({ length: 3, start: 'pinned', end: 'fixed', load })
    expect(propped.end.moment).toBeCloseTo(fixed.end.moment + fixed.start.moment / 2, 10)
  })
})

describe('beam: refusals', () => {
  const good: BeamSpan = {
    length: 2,
    start: 'pinned',
    end: 'fixed',
    load: [
      [0, 1],
      [2, 1],
    ],
  }
  const refused = (change: Partial<BeamSpan>) => () => beam({ ...good, ...change })
  it.each([
    [{ length: 0 }, 'Expected `length` above 0, got 0'],
    [{ length: -1 }, 'Expected `length` above 0, got -1'],
    [{ length: Number.NaN }, 'Expected a finite number for `length`, got NaN'],
    [{ start: 'free', end: 'free' }, 'Expected ends on which a beam stands, got free and free'],
    [{ start: 'free', end: 'pinned' }, 'got free and pinned'],
    [{ start: 'pinned', end: 'free' }, 'got pinned and free'],
    [{ load: [[0, 1]] }, 'Expected two points at least in `load`, got 1'],
    [
      {
        load: [
          [0, 1],
          [2.001, 1],
        ],
      },
      'Expected places from 0 to 2 for `load`, got 2.001',
    ],
    [
      {
        load: [
          [-0.1, 1],
          [2, 1],
        ],
      },
      'got -0.1',
    ],
    [
      {
        load: [
          [1, 1],
          [0.5, 1],
        ],
      },
      'Expected positions of `load` in order, got 0.5 after 1',
    ],
    [
      {
        load: [
          [0, 1],
          [1, 1],
          [1, 2],
          [1, 3],
        ],
      },
      'got three at 1',
    ],
    [
      {
        load: [
          [0, Number.POSITIVE_INFINITY],
          [1, 1],
        ],
      },
      'Expected a finite number for `load`, got Infinity',
    ],
  ] as readonly (readonly [Partial<BeamSpan>, string])[])('%o', (change, message) => {
    expect(refused(change)).toThrow(NumericRefusal)
    expect(refused(change)).toThrow(message)
  })

  it('not a position past an end by rounding', () => {
    const load = [
      [-1e-12, 1],
      [2 * (1 + 1e-12), 1],
    ] as const
    expect(beam({ ...good, load }).end.moment).toBeCloseTo(-0.5, 12)
  })

  it('a place off the beam', () => {
    const { solution } = beam(good)
    expect(() => beamActionsAt(solution, 2.01)).toThrow('Expected places from 0 to 2 for `x`, got 2.01')
    expect(() => beamActionsAt(solution, Number.NaN)).toThrow('got NaN')
  })
})
