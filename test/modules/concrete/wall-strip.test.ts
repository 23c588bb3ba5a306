import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { wallStrip } from '../../../src/modules/concrete/wall-strip.ts'
import { wallStripDifferences, wallStripZeroShear } from '../../../src/modules/concrete/wall-strip-beams.ts'
import { runModule } from '../run-module.ts'

type Points = readonly (readonly [z: number, p: number])[]
type Asked = { height?: number; points?: Points; base?: string; top?: string; load_factor?: string; roof?: string }

const run = ({ height = 3, points, base = 'fixed', top = 'pinned', load_factor = '1', roof = '0 kN/m' }: Asked = {}) =>
  runModule(wallStrip, {
    height: `${height} m`,
    diagram: (
      points ?? [
        [0, 0],
        [height, 30],
      ]
    ).map(([z, p]) => ({ z: `${z} m`, p: `${p} kPa` })),
    load_factor,
    base,
    top,
    thickness: '300 mm',
    roof_reaction: roof,
  })

const ends = [
  ['fixed', 'pinned'],
  ['fixed', 'fixed'],
  ['fixed', 'free'],
  ['pinned', 'pinned'],
  ['pinned', 'fixed'],
] as const

/** Any diagram that goes down 3 m in four segments, jumps included, with some load. */
const diagrams: fc.Arbitrary<Points> = fc
  .tuple(
    fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 3, maxLength: 3 }),
    fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 5, maxLength: 5 }),
  )
  .filter(([, p]) => p.filter(each => each > 0).length > 2)
  .map(([depths, p]) => {
    const z = [0, ...[...depths].sort((a, b) => a - b), 300].map(each => each / 100)
    return z.map((each, i) => [each, p[i] ?? 0] as const)
  })
  .filter(points => points.some(([z, p], i) => i > 0 && z > (points[i - 1]?.[0] ?? 0) && p > 0))

describe('wall strip', () => {
  it('wall-strip: the example evaluates without a message', () => {
    expect(runModule(wallStrip, wallStrip.example).diagnostics).toEqual([])
  })

  it.each(ends)('wall-strip: base %s, top %s: reactions carry the load and balance about the base', (base, top) => {
    fc.assert(
      fc.property(diagrams, points => {
        const result = run({ points, base, top })
        expect(result.errors).toEqual([])
        const load = result.si('P_q')
        expect((result.si('R_base') + result.si('R_top')) / load).toBeCloseTo(1, 9)
        const about = result.si('M_top') + result.si('R_top') * 3 - (load * 3 - result.si('S_first'))
        expect(Math.abs(about - result.si('M_base')) / (load * 3)).toBeLessThan(1e-9)
      }),
      { numRuns: 12 },
    )
  })

  it.each(ends)('wall-strip: base %s, top %s: loads superpose', (base, top) => {
    const first: Points = [
      [0, 10],
      [1.2, 40],
      [3, 5],
    ]
    const second: Points = [
      [0, 3],
      [1.2, 0],
      [3, 60],
    ]
    const both: Points = first.map(([z, p], i) => [z, p + (second[i]?.[1] ?? 0)])
    for (const name of ['M_base', 'M_top', 'R_base', 'R_top']) {
      const [a, b, sum] = [first, second, both].map(points => run({ points, base, top }).si(name))
      expect(sum).toBeCloseTo((a ?? 0) + (b ?? 0), 6)
    }
  })

  it('wall-strip: a wall turned over has its answers turned over', () => {
    const down: Points = [
      [0, 12],
      [1, 30],
      [3, 70],
    ]
    const up: Points = down.map(([z, p]) => [3 - z, p] as const).reverse()
    const [one, other] = [run({ points: down, base: 'fixed' }), run({ points: up, base: 'pinned', top: 'fixed' })]
    expect(other.si('M_top')).toBeCloseTo(one.si('M_base'), 6)
    expect(other.si('M_span')).toBeCloseTo(one.si('M_span'), 6)
    expect(other.si('z_m')).toBeCloseTo(3 - one.si('z_m'), 9)
    expect(other.si('R_top')).toBeCloseTo(one.si('R_base'), 6)
  })

  it('wall-strip: fixed at the base only equals fixed at both ends with the top moment let go', () => {
    const [held, let_go] = [run({ top: 'fixed' }), run({ top: 'pinned' })]
    // Letting the top moment go carries half of it over to the base.
    expect(let_go.si('M_base')).toBeCloseTo(held.si('M_base') + held.si('M_top') / 2, 6)
  })

  it('wall-strip: a further point on a straight line, or a point twice, changes nothing', () => {
    const plain = run()
    const cut = run({
      points: [
        [0, 0],
        [1, 10],
        [1, 10],
        [3, 30],
      ],
    })
    for (const name of ['M_base', 'M_span', 'z_m', 'R_base']) expect(cut.si(name)).toBeCloseTo(plain.si(name), 6)
  })

  it('wall-strip: a jump in the pressure is two points at one depth', () => {
    const result = run({
      base: 'pinned',
      points: [
        [0, 0],
        [1, 0],
        [1, 20],
        [3, 20],
      ],
    })
    // Simple beam, 20 kPa over the lower 2 m of 3 m: R_top = 20*2*1/3, and the shear is nil R_top/20 below the jump.
    expect(result.si('R_top')).toBeCloseTo(40000 / 3, 6)
    expect(result.si('z_m')).toBeCloseTo(1 + 2 / 3, 9)
    expect(result.si('M_span')).toBeCloseTo((40000 / 3) * (1 + 1 / 3), 5)
  })

  it('wall-strip: the moment is nowhere larger than at the place of no shear', () => {
    fc.assert(
      fc.property(diagrams, fc.constantFrom(...ends.filter(([, top]) => top !== 'free')), (points, [base, top]) => {
        const result = run({ points, base, top })
        expect(result.satisfied('shear_vanishes')).toBe(true)
        const [m, r, most] = [result.si('M_top'), result.si('R_top'), result.si('M_span')]
        for (let i = 1; i < 60; i++) {
          expect(m + (r * 3 * i) / 60 - momentOfLoad(points, (3 * i) / 60)).toBeLessThanOrEqual(most + 1e-6 * r)
        }
      }),
      { numRuns: 12 },
    )
  })

  it('wall-strip: the load factor scales every moment and shear, not the thrust', () => {
    const [one, more] = [run({ roof: '50 kN/m' }), run({ roof: '50 kN/m', load_factor: '1.5' })]
    for (const name of ['M_base', 'M_span', 'R_base', 'R_top', 'P_q']) {
      expect(more.si(name)).toBeCloseTo(1.5 * one.si(name), 6)
    }
    expect(more.si('z_m')).toBeCloseTo(one.si('z_m'), 9)
    expect(more.si('N_base')).toBe(one.si('N_base'))
    expect(one.si('N_base')).toBeCloseTo(50000 + 24000 * 0.3 * 3, 6)
  })

  it('wall-strip: a cantilever has no span moment and is said to be a stage of building', () => {
    const result = run({ top: 'free' })
    expect(result.si('M_span')).toBe(0)
    expect(result.si('R_top')).toBeCloseTo(0, 6)
    expect(result.diagnostics.map(fault => [fault.rule, fault.severity])).toEqual([['limit-exceeded', 'warning']])
  })

  it.each<[string, Asked]>([
    ['a pinned base under a free top', { base: 'pinned', top: 'free' }],
    [
      'a diagram that begins below the top',
      {
        points: [
          [0.01, 0],
          [3, 30],
        ],
      },
    ],
    [
      'a diagram that stops short',
      {
        points: [
          [0, 0],
          [2.99, 30],
        ],
      },
    ],
    [
      'a diagram that goes too far',
      {
        points: [
          [0, 0],
          [3.01, 30],
        ],
      },
    ],
    [
      'points that go up',
      {
        points: [
          [0, 0],
          [2, 30],
          [1, 30],
          [3, 30],
        ],
      },
    ],
    [
      'no load',
      {
        points: [
          [0, 0],
          [3, 0],
        ],
      },
    ],
  ])('wall-strip: %s is refused', (_, asked) => {
    const result = run(asked)
    expect(result.errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
    expect(result.has('M_base')).toBe(false)
  })

  it('wall-strip: a pressure or a depth below nil is refused', () => {
    const rules = (points: Points) => run({ points }).errors.map(fault => fault.rule)
    expect(
      rules([
        [0, -1],
        [3, 30],
      ]),
    ).toContain('value-outside-range')
    expect(
      rules([
        [-0.1, 0],
        [3, 30],
      ]),
    ).toContain('value-outside-range')
  })

  it('wall-strip: American units give the same answers', () => {
    const us = runModule(
      wallStrip,
      {
        height: '10 ft',
        diagram: [
          { z: '0 ft', p: '0 psf' },
          { z: '10 ft', p: '600 psf' },
        ],
        base: 'fixed',
        top: 'pinned',
        thickness: '1 ft',
      },
      { units: 'US' },
    )
    expect(us.errors).toEqual([])
    // p H^2/15 and 2 p H/5.
    expect(us.shown('M_base')).toBe('-4000 lbf*ft/ft')
    expect(us.shown('R_base')).toBe('2400 plf')
  })

  it.each(ends)('wall-strip: base %s, top %s: finite differences agree within their bands', (base, top) => {
    fc.assert(
      fc.property(diagrams, points => {
        const result = run({ points, base, top })
        expect(result.errors).toEqual([])
        expect(result.agrees.length).toBeGreaterThanOrEqual(2)
        for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
      }),
      { numRuns: 8 },
    )
  })

  it('wall-strip: three points at one depth count as a jump from the first to the last', () => {
    const jump = (inner: Points) => run({ points: [[0, 0], ...inner, [3, 40]] })
    const [two, three] = [
      jump([
        [1, 5],
        [1, 30],
      ]),
      jump([
        [1, 5],
        [1, 99],
        [1, 30],
      ]),
    ]
    expect(three.errors).toEqual([])
    expect(three.si('M_span')).toBeCloseTo(two.si('M_span'), 6)
    expect(three.si('M_span_2')).toBeCloseTo(two.si('M_span_2'), 6)
  })

  it('wall-strip: the numerical methods refuse what is no strip', () => {
    const words = { base: 'pinned', top: 'free' }
    expect(wallStripZeroShear.run({ z: [0, 3], q: [10, 10], height: 3 }, words).ok).toBe(false)
    expect(wallStripDifferences.run({ z: [0, 3], q: [10, 10], height: 3 }, words).ok).toBe(false)
    expect(wallStripZeroShear.run({ z: [0, 3], q: [10, 10], height: 3 }, { base: 'fixed', top: 'free' }).ok).toBe(false)
    const pinned = wallStripZeroShear.run({ z: [0, 3], q: [10, 10], height: 3 }, { base: 'pinned', top: 'pinned' })
    expect(pinned).toMatchObject({ ok: true, values: { z_zero: 1.5 } })
  })
})

/** Moment about depth `x` of the load above it, stretch by stretch: Simpson's rule is exact for straight pressure times straight arm. */
function momentOfLoad(points: Points, x: number): number {
  return points.slice(1).reduce((sum, [b, q], i) => {
    const [a, p] = points[i] ?? [0, 0]
    const to = Math.min(b, x)
    if (!(to > a)) return sum
    const at = (z: number): number => 1000 * (p + ((q - p) * (z - a)) / (b - a)) * (x - z)
    return sum + ((to - a) / 6) * (at(a) + 4 * at((a + to) / 2) + at(to))
  }, 0)
}
