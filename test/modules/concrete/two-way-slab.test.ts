import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { panelWords } from '../../../src/modules/concrete/is456-table-26.ts'
import { twoWaySlab } from '../../../src/modules/concrete/two-way-slab.ts'
import { runModule } from '../run-module.ts'

const words = Object.keys(panelWords)
const kilo = 1000

type Asked = { r?: number; edges?: string; corners?: string; poisson?: string; lx?: string; load?: string }

const run = ({
  r = 1,
  edges = 'all continuous',
  corners = 'held down',
  poisson = '0',
  lx = '2 m',
  load = '10 kN/m^2',
}: Asked = {}) => runModule(twoWaySlab, { short_span: lx, long_span: `${r} * (${lx})`, load, edges, corners, poisson })

describe('two-way slab', () => {
  it('two-way-slab: the example evaluates without error or warning, and every second method agrees', () => {
    const result = runModule(twoWaySlab, twoWaySlab.example)
    expect(result.diagnostics).toEqual([])
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
    expect(result.agrees.length).toBe(3)
  })

  it('two-way-slab: both moments take the short span squared', () => {
    const result = run({ r: 1.5, edges: 'all continuous' })
    expect(result.si('M_x_mid')).toBeCloseTo(0.041 * 10 * 4 * kilo, 6)
    expect(result.si('M_x_sup')).toBeCloseTo(0.053 * 10 * 4 * kilo, 6)
    expect(result.si('M_y_mid')).toBeCloseTo(0.024 * 10 * 4 * kilo, 6)
    expect(result.si('M_y_sup')).toBeCloseTo(0.032 * 10 * 4 * kilo, 6)
  })

  it.each(['all continuous', 'two adjacent edges discontinuous', 'all discontinuous'])(
    'two-way-slab: a square panel, %s, has equal moments both ways',
    edges => {
      const result = run({ edges })
      expect(result.si('M_x_mid')).toBe(result.si('M_y_mid'))
      expect(result.si('M_x_sup')).toBe(result.si('M_y_sup'))
    },
  )

  it.each(words)('two-way-slab: %s has hogging moments only where an edge is continuous', edges => {
    const result = run({ r: 1.3, edges })
    const none = (kind: 'long' | 'short') =>
      edges === 'all discontinuous' ||
      edges === `two ${kind} edges discontinuous` ||
      edges === `one ${kind === 'long' ? 'short' : 'long'} edge continuous`
    expect(result.errors).toEqual([])
    expect(result.si('M_x_sup') === 0).toBe(none('long'))
    expect(result.si('M_y_sup') === 0).toBe(none('short'))
  })

  it('two-way-slab: more discontinuous edges never lessen the midspan moment', () => {
    for (const r of [1, 1.25, 1.6, 2]) {
      const most = run({ r, edges: 'all discontinuous' }).si('M_x_mid')
      const least = run({ r, edges: 'all continuous' }).si('M_x_mid')
      for (const edges of words) {
        const between = run({ r, edges }).si('M_x_mid')
        expect(between).toBeLessThanOrEqual(most)
        expect(between).toBeGreaterThanOrEqual(least)
      }
    }
  })

  it('two-way-slab: moments grow with the ratio of spans and scale with the load and the span squared', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...words),
        fc.double({ min: 1, max: 1.9, noNaN: true }),
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        (edges, r, more) => {
          const one = run({ r, edges }).si('M_x_mid')
          expect(run({ r: r + more, edges }).si('M_x_mid')).toBeGreaterThan(one)
          expect(run({ r, edges, load: '30 kN/m^2' }).si('M_x_mid')).toBeCloseTo(3 * one, 4)
          expect(run({ r, edges, lx: '4 m' }).si('M_x_mid')).toBeCloseTo(4 * one, 4)
        },
      ),
      { numRuns: 15 },
    )
  })

  it('two-way-slab: the edges carry the load, and the mean line loads are their shares', () => {
    const result = run({ r: 1.5 })
    expect(result.satisfied('load_carried')).toBe(true)
    expect(2 * (result.si('q_long') * 3 + result.si('q_short') * 2)).toBeCloseTo(60 * kilo, 6)
    expect(result.si('V_max')).toBeCloseTo(10 * kilo, 6)
  })

  it.each([
    ['all continuous', 0, 0],
    ['one short edge discontinuous', 0, 3 / 8],
    ['two adjacent edges discontinuous', 3 / 4, 3 / 8],
    ['two long edges discontinuous', 0, 3 / 8],
    ['one long edge continuous', 3 / 4, 3 / 8],
    ['all discontinuous', 3 / 4, 0],
  ])('two-way-slab: corner steel of %s is %d and %d of the midspan steel (D-1.8 to D-1.10)', (edges, two, one) => {
    const result = run({ r: 1.2, edges })
    expect(result.si('c_two')).toBe(two)
    expect(result.si('c_one')).toBe(one)
    expect(result.si('l_c')).toBeCloseTo(0.4, 12)
  })

  it('two-way-slab: top steel at discontinuous edges is asked for only where there is one (D-1.6)', () => {
    expect(run({ r: 1.5 }).has('k_top')).toBe(false)
    const result = run({ r: 1.5, edges: 'one long edge discontinuous' })
    expect(result.si('k_top')).toBe(0.5)
    expect(result.si('x_top')).toBeCloseTo(0.2, 12)
    expect(result.si('y_top')).toBeCloseTo(0.3, 12)
  })

  it('two-way-slab: spans the wrong way round are refused with the advice to swap them', () => {
    const result = run({ r: 0.999 })
    expect(result.errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
    expect(result.errors[0]?.help).toBe('Swap the two')
    expect(result.has('M_x_mid')).toBe(false)
  })

  it('two-way-slab: Table 26 is refused past a ratio of 2, Table 27 past 3', () => {
    const lifting = { edges: 'all discontinuous', corners: 'free to lift' }
    expect(run({ r: 2 }).errors).toEqual([])
    expect(run({ r: 2.001 }).errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
    expect(run({ r: 3, ...lifting }).errors).toEqual([])
    expect(run({ r: 3.001, ...lifting }).errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
  })

  it.each(words.filter(word => word !== 'all discontinuous'))(
    'two-way-slab: corners free to lift are refused with %s',
    edges => {
      const result = run({ r: 1.5, edges, corners: 'free to lift' })
      expect(result.errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
      expect(result.has('M_x_mid')).toBe(false)
    },
  )

  it('two-way-slab: Table 27 keeps to its closed form, at its keys to 0.0006 and between them to 0.001', () => {
    for (let r = 1; r <= 3; r += 0.05) {
      const result = run({ r, edges: 'all discontinuous', corners: 'free to lift' })
      const room = [1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.75, 2, 2.5, 3].some(key => Math.abs(key - r) < 1e-6) ? 0.0006 : 0.001
      expect(Math.abs(result.si('alpha_x_mid') - result.si('alpha_x_form'))).toBeLessThanOrEqual(room)
      expect(result.agrees).toEqual([])
    }
  })

  it.each([0, -1])('two-way-slab: a load of %d is refused', load => {
    expect(run({ load: `${load} kN/m^2` }).errors.map(fault => fault.rule)).toContain('value-outside-range')
  })

  it('two-way-slab: American units give the same moments in their own', () => {
    const si = run({ r: 1.25, lx: '3.048 m', load: '47.88025898 kN/m^2' })
    const us = runModule(
      twoWaySlab,
      { short_span: '10 ft', long_span: '12.5 ft', load: '1000 psf', edges: 'all continuous', corners: 'held down' },
      { units: 'US' },
    )
    expect(us.si('M_x_mid') / si.si('M_x_mid')).toBeCloseTo(1, 8)
    expect(us.shown('M_x_mid')).toBe('3400 lbf*ft/ft')
  })
})
