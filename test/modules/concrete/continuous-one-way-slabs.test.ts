import { describe, expect, it } from 'vitest'
import { continuousStrip } from '../../../src/modules/concrete/continuous-strip.ts'
import { oneWaySlabAci318 } from '../../../src/modules/concrete/one-way-slab-aci-318.ts'
import { oneWaySlabIs456 } from '../../../src/modules/concrete/one-way-slab-is-456.ts'
import type { Module } from '../../../src/modules/module.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Changes = Readonly<Record<string, string>>
const common = { dead_load: '30 kN/m^2', live_load: '10 kN/m^2', spans: 'four spans' }
const runner =
  (module: Module, base: Changes) =>
  (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
    runModule(module, { ...common, ...base, ...changes }, { units })
const is = runner(oneWaySlabIs456, { span: '4 m', shortest_span: '4 m' })
const aci = runner(oneWaySlabAci318, { span: '4 m', shortest_span: '4 m', end_support: 'turns freely' })
const spanWords = ['three spans', 'four spans', 'five spans or more']
const rules = (result: ReturnType<typeof is>) => result.errors.map(fault => fault.rule)

const agreeAll = (result: ReturnType<typeof is>, count: number) => {
  expect(result.errors).toEqual([])
  expect(result.agrees).toHaveLength(count)
  for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
}

describe('one-way slab by IS 456 coefficients', () => {
  it('one-way-slab-is-456: the coefficients of Table 12 for one kind of load at a time', () => {
    const dead = is({ live_load: '0 kN/m^2', dead_load: '1000 kN/m^2', span: '1 m', shortest_span: '1 m' })
    for (const [name, parts] of [
      ['M_end', 12],
      ['M_mid', 16],
      ['M_first', -10],
      ['M_other', -12],
    ] as const)
      expect(dead.si(name)).toBeCloseTo(1e6 / parts, 6)
    const live = is({ live_load: '1000 kN/m^2', dead_load: '0.000001 kN/m^2', span: '1 m', shortest_span: '1 m' })
    for (const [name, parts] of [
      ['M_end', 10],
      ['M_mid', 12],
      ['M_first', -9],
      ['M_other', -9],
    ] as const)
      expect(live.si(name) / (1e6 / parts)).toBeCloseTo(1, 6)
  })

  it.each(spanWords)(
    'one-way-slab-is-456: the beam keeps to its bands for %s, whatever the share of live load',
    spans => {
      for (const live of [0, 3, 10, 30, 100]) agreeAll(is({ spans, live_load: `${live} kN/m^2` }), 4)
    },
  )

  it('one-way-slab-is-456: three spans have no interior support but the first ones', () => {
    expect(is({ spans: 'three spans' }).has('M_other')).toBe(false)
    expect(is({ spans: 'four spans' }).has('M_other')).toBe(true)
  })

  // IS 456 cl. 22.5.2 (memory): W l/24 at the support, and 0.05 more for the shear coefficient.
  it('one-way-slab-is-456: a wall that holds the end in part gives it a moment and more shear', () => {
    const held = is({ end_support: 'partly held' })
    expect(held.si('M_edge')).toBeCloseTo((-40000 * 16) / 24, 6)
    expect(held.si('V_end') - is().si('V_end')).toBeCloseTo(0.05 * 40000 * 4, 6)
    expect(is().si('M_edge')).toBe(0)
  })

  it('one-way-slab-is-456: the spans may differ by 15 % of the longest and no more', () => {
    expect(rules(is({ shortest_span: '3.4 m' }))).toEqual([])
    expect(rules(is({ shortest_span: '3.39 m' }))).toEqual(['limit-exceeded'])
    expect(rules(is({ shortest_span: '4.01 m' }))).toContain('limit-exceeded')
    expect(rules(is({ dead_load: '0 kN/m^2' }))).toContain('value-outside-range')
    expect(rules(is({ live_load: '-1 kN/m^2' }))).toContain('value-outside-range')
    expect(rules(is({ spans: 'two spans' }))).toContain('choice-unknown')
  })

  it('one-way-slab-is-456: more load, of either kind, and longer spans give more of everything', () => {
    for (const name of ['M_end', 'M_mid', 'M_first', 'M_other', 'V_end', 'V_outer', 'V_inner']) {
      const size = (changes: Changes) => Math.abs(is(changes).si(name))
      expect(size({ dead_load: '31 kN/m^2' })).toBeGreaterThan(size({}))
      expect(size({ live_load: '11 kN/m^2' })).toBeGreaterThan(size({}))
      expect(size({ span: '4.1 m' })).toBeGreaterThan(size({}))
    }
  })
})

describe('one-way slab by ACI 318 coefficients', () => {
  // ACI 318-19 Table 6.5.2 (memory), w l^2 = 640 kN m/m.
  it.each([
    [{ spans: 'two spans' }, { M_first: -9, M_end: 11 }],
    [{}, { M_first: -10, M_end: 11, M_mid: 16, M_other: -11 }],
    [{ end_support: 'spandrel beam' }, { M_edge: -24, M_end: 14 }],
    [{ end_support: 'column' }, { M_edge: -16, M_end: 14 }],
  ])('one-way-slab-aci-318: %j has its coefficients', (changes, parts) => {
    const result = aci(changes)
    for (const [name, part] of Object.entries(parts)) expect(result.si(name)).toBeCloseTo(640000 / part, 6)
  })

  it('one-way-slab-aci-318: up to 10 ft of clear span one coefficient serves every support', () => {
    const spans = (feet: number) => ({ span: `${feet} ft`, shortest_span: `${feet} ft`, end_support: 'column' })
    const at = aci(spans(10))
    for (const name of ['M_first', 'M_other', 'M_edge'])
      expect(at.si(name)).toBeCloseTo((-40000 * (10 * 0.3048) ** 2) / 12, 6)
    expect(aci(spans(10.001)).si('M_edge')).toBeCloseTo((-40000 * (10.001 * 0.3048) ** 2) / 16, 6)
    expect(aci({ ...spans(10), end_support: 'turns freely' }).si('M_edge')).toBe(0)
  })

  it.each(['two spans', ...spanWords])('one-way-slab-aci-318: the beam keeps to its bands for %s', spans => {
    for (const end_support of ['turns freely', 'spandrel beam', 'column'])
      for (const live of [0, 10, 60, 120])
        for (const span of ['3 m', '4 m'])
          agreeAll(
            aci({ spans, end_support, live_load: `${live} kN/m^2`, span, shortest_span: span }),
            2 + (spans === 'two spans' ? 0 : 1) + (span === '4 m' ? 1 : 0),
          )
  })

  it('one-way-slab-aci-318: two spans have no interior span', () => {
    const two = aci({ spans: 'two spans' })
    expect([two.has('M_mid'), two.has('M_other'), two.has('M_mid_strip')]).toEqual([false, false, false])
  })

  it('one-way-slab-aci-318: the limits turn at 1.2 between spans and 3 between loads', () => {
    expect(rules(aci({ span: '4.8 m' }))).toEqual([])
    expect(rules(aci({ span: '4.81 m' }))).toEqual(['limit-exceeded'])
    expect(rules(aci({ span: '3.9 m' }))).toContain('limit-exceeded')
    expect(rules(aci({ live_load: '120 kN/m^2' }))).toEqual([])
    expect(rules(aci({ live_load: '120.1 kN/m^2' }))).toEqual(['limit-exceeded'])
  })

  it('one-way-slab-aci-318: shears are w l/2, and 15 % more at the first interior support', () => {
    expect(aci().si('V_face')).toBeCloseTo(80000, 6)
    expect(aci().si('V_outer')).toBeCloseTo(92000, 6)
  })

  it('one-way-slab-aci-318: metric and American units give the same moments', () => {
    expect(aci({}, 'US').si('M_end')).toBeCloseTo(aci().si('M_end'), 6)
    expect(aci({}, 'US').shown('M_end')).toMatch(/ lbf\*ft\/ft$/)
  })
})

describe('continuous strip', () => {
  // Handbook coefficients, live load arranged for the worst (memory): end span, first support of 3 equal spans.
  it('one-way-slab-is-456: live load arranged for the worst has the coefficients of the handbooks', () => {
    const solved = continuousStrip.run({ live: 1 }, { spans: 'three spans' })
    if (!solved.ok) throw new Error(solved.says)
    const { end = 0, inner = 0, first = 0, v_outer = 0 } = solved.values
    expect(Math.abs(end - 0.101)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(inner - (0.075 + 0.117))).toBeLessThanOrEqual(0.001)
    expect(Math.abs(first - 0.117)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(v_outer - 0.617)).toBeLessThanOrEqual(0.0005)
  })

  // Statics: under one load everywhere a span sags at its middle by w l^2/8 less the mean of its end moments.
  it.each(['three spans', 'five spans or more'])(
    'one-way-slab-is-456: without live load the middle span of %s has w l^2/8 in sagging and hogging together',
    spans => {
      const solved = continuousStrip.run({ live: 0 }, { spans })
      if (!solved.ok) throw new Error(solved.says)
      expect(solved.values.inner).toBeGreaterThanOrEqual(0.125 - 1e-12)
      expect(solved.values.inner).toBeLessThan(0.1275)
    },
  )

  it('one-way-slab-aci-318: a wrong coefficient of an interior span would be seen', () => {
    const { compare = [] } = oneWaySlabAci318.second ?? {}
    const band = compare.find(({ first }) => first === 'M_mid_strip')?.band ?? 1
    const sums = [60, 0].map(live => {
      const at = aci({ live_load: `${live} kN/m^2`, spans: 'five spans or more' })
      return { load: at.si('w_u') * 16, elastic: at.si('M_mid_strip_el') }
    })
    const apart = (part: number) =>
      Math.max(...sums.map(({ load, elastic }) => Math.abs(elastic / (load * (1 / part + 1 / 11)) - 1)))
    expect(apart(16)).toBeLessThan(band)
    for (const part of [10, 40]) expect(apart(part)).toBeGreaterThan(band)
  })

  it('one-way-slab-is-456: the beam refuses a share that is none', () => {
    expect(continuousStrip.run({ live: 1.1 }, { spans: 'three spans' }).ok).toBe(false)
    expect(continuousStrip.run({ live: 0.1 }, { spans: 'six spans' }).ok).toBe(false)
  })

  it.each([
    [
      oneWaySlabIs456,
      { end_support: 'free', spans: 'three spans' },
      ['M_end', 'M_mid', 'M_first', 'V_end', 'V_outer', 'V_inner'],
    ],
    [oneWaySlabAci318, { spans: 'two spans' }, ['M_edge', 'M_end', 'M_first', 'V_face', 'V_outer']],
  ] as const)(
    'one-way-slab-is-456, one-way-slab-aci-318: the chart of $id names what it has',
    (module, changes, symbols) => {
      const drawing = drawingOf(module, { ...module.example, ...changes })
      const named = drawing.shapes.flatMap(shape => (shape.kind === 'label' ? (shape.label.symbol ?? []) : []))
      expect(named.toSorted()).toEqual([...symbols].toSorted())
    },
  )
})
