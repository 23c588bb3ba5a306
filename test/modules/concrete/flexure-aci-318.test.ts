import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flexureAci318 } from '../../../src/modules/concrete/flexure-aci-318.ts'
import { flexureAci318Section } from '../../../src/modules/concrete/flexure-aci-318-second.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const base = {
  moment: '6000 lbf*ft/ft',
  thickness: '10 in',
  cover: '1.75 in',
  bar_size: '0.5 in',
  spacing: '6 in',
  f_c: '4000 psi',
  f_y: '60000 psi',
  aggregate: '0.75 in',
  width: '12 in',
}
type Changes = Partial<typeof base> & { outer_bar?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'US') =>
  runModule(flexureAci318, { ...base, ...changes }, { units })
const inch = 0.0254
/** Spacing at which half-inch bars give this much steel (square inches) on a foot. */
const spacingFor = (area: number) => `${(Math.PI * 0.25 * 3) / area} in`

describe('flexure by ACI 318', () => {
  it('flexure-aci-318: the example evaluates without a message and both methods agree', () => {
    const result = runModule(flexureAci318, flexureAci318.example)
    expect(result.diagnostics).toEqual([])
    expect(result.agrees).toHaveLength(1)
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  // ACI 318-19 Table 22.2.2.4.3 (memory).
  it.each([
    ['3000 psi', 0.85],
    ['4000 psi', 0.85],
    ['5000 psi', 0.8],
    ['8000 psi', 0.65],
    ['9000 psi', 0.65],
  ])('flexure-aci-318: the stress block of %s is %d of the neutral axis', (f_c, beta) => {
    expect(run({ f_c }).si('beta_1')).toBeCloseTo(beta, 12)
  })

  it('flexure-aci-318: bars of exactly the steel needed carry exactly the moment', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6000, max: 28000, noNaN: true }),
        fc.constantFrom('3000 psi', '4000 psi', '6000 psi'),
        fc.constantFrom('40000 psi', '60000 psi', '80000 psi'),
        (moment, f_c, f_y) => {
          const asked = { moment: `${moment} lbf*ft/ft`, f_c, f_y }
          const needed = run(asked).si('A_req') / inch ** 2
          const carried = run({ ...asked, spacing: spacingFor(needed) }).si('M_R')
          expect(carried / run(asked).si('moment')).toBeCloseTo(moment > 0 ? 1 : -1, 8)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('flexure-aci-318: plane strains give the same moment within 2 % wherever the steel strains enough', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1.4, noNaN: true }),
        fc.constantFrom('2500 psi', '4000 psi', '7000 psi', '10000 psi'),
        fc.constantFrom('40000 psi', '60000 psi', '100000 psi'),
        (area, f_c, f_y) => {
          const result = run({ spacing: spacingFor(area), f_c, f_y, moment: '100 lbf*ft/ft' })
          fc.pre(result.satisfied('tension_controlled') === true)
          expect(result.agrees).toHaveLength(1)
          for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('flexure-aci-318: more steel, more depth or stronger concrete never lessen the capacity', () => {
    const capacity = (changes: Changes) => run(changes).si('M_R')
    expect(capacity({ spacing: '5 in' })).toBeGreaterThan(capacity({}))
    expect(capacity({ thickness: '11 in' })).toBeGreaterThan(capacity({}))
    expect(capacity({ f_c: '5000 psi' })).toBeGreaterThan(capacity({}))
    expect(capacity({ cover: '2 in' })).toBeLessThan(capacity({}))
    expect(run({ outer_bar: '0.5 in' }).si('d') / inch).toBeCloseTo(7.5, 10)
  })

  it('flexure-aci-318: each check turns at its limit', () => {
    const holds = (name: string, changes: Changes) => run(changes).satisfied(name)
    // 0.0018 x 12 x 10 = 0.216 in2 of half-inch bars
    expect(run().si('A_min') / inch ** 2).toBeCloseTo(0.216, 10)
    expect(holds('area', { spacing: '10.9 in', moment: '500 lbf*ft/ft' })).toBe(true)
    expect(holds('area', { spacing: '10.95 in', moment: '500 lbf*ft/ft' })).toBe(false)
    const mild = { f_y: '40000 psi', moment: '500 lbf*ft/ft' }
    expect(holds('spacing_most', { ...mild, cover: '1.5 in', spacing: '18 in' })).toBe(true)
    expect(holds('spacing_most', { ...mild, cover: '1.5 in', spacing: '18.1 in' })).toBe(false)
    expect(holds('spacing_most', { ...mild, cover: '1 in', thickness: '5 in', spacing: '15 in' })).toBe(true)
    expect(holds('spacing_most', { ...mild, cover: '1 in', thickness: '5 in', spacing: '15.1 in' })).toBe(false)
    expect(holds('spacing_clear', { spacing: '1.5 in' })).toBe(true)
    expect(holds('spacing_clear', { spacing: '1.49 in' })).toBe(false)
    const capacity = run().si('M_R')
    expect(holds('capacity', { moment: `${0.9999 * capacity} N*m/m` })).toBe(true)
    expect(holds('capacity', { moment: `-${1.0001 * capacity} N*m/m` })).toBe(false)
  })

  // ACI 318-19 Table 24.3.2 (memory): 15 in less 2.5 times the cover of these bars, and 12 in, at 40 ksi.
  it.each([
    ['1 in', '0 in', '60000 psi', 12],
    ['2 in', '0 in', '60000 psi', 10],
    ['3 in', '0 in', '60000 psi', 7.5],
    ['1.5 in', '0.5 in', '60000 psi', 10],
    ['2 in', '0 in', '80000 psi', 6.25],
  ])('flexure-aci-318: cover %s, outer bars %s, %s: cracks allow %d in', (cover, outer_bar, f_y, allowed) => {
    const at = (spacing: number) => run({ cover, outer_bar, f_y, spacing: `${spacing} in`, moment: '500 lbf*ft/ft' })
    expect(at(8).si('s_crack') / inch).toBeCloseTo(allowed, 10)
    expect(at(allowed - 0.01).satisfied('spacing_most')).toBe(true)
    expect(at(allowed + 0.01).satisfied('spacing_most')).toBe(false)
  })

  it('flexure-aci-318: with too much steel the check fails and the most the code allows is counted', () => {
    const result = run({ spacing: '1.1 in' })
    expect(result.satisfied('tension_controlled')).toBe(false)
    expect(result.si('M_R') * 12 * inch).toBeCloseTo(result.si('M_t'), 6)
    expect(result.has('M_n')).toBe(false)
    expect(result.si('M_R_strain')).toBeGreaterThan(result.si('M_R'))
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  it('flexure-aci-318: a moment past the most is refused', () => {
    const most = run().si('M_t') / (12 * inch)
    expect(run({ moment: `${0.9999 * most} N*m/m` }).errors).toEqual([])
    const over = run({ moment: `${1.0001 * most} N*m/m` })
    expect(over.errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
    expect(over.has('A_req')).toBe(false)
  })

  it.each([
    [{ f_c: '2499 psi' }, 'value-outside-range'],
    [{ f_c: '10001 psi' }, 'value-outside-range'],
    [{ f_y: '39999 psi' }, 'value-outside-range'],
    [{ cover: '9.75 in' }, 'limit-exceeded'],
    [{ spacing: '0.5 in' }, 'limit-exceeded'],
    [{ moment: '10 kip*ft' }, 'dimension-mismatch'],
  ])('flexure-aci-318: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('flexure-aci-318: little effective depth is said', () => {
    const kept = (cover: string) => run({ cover, moment: '100 lbf*ft/ft' }).limits[1]?.kept
    expect(kept('4.75 in')).toBe(true)
    expect(kept('4.76 in')).toBe(false)
  })

  // Hognestad's curve at 0.003 (closed form): 2/3 of 0.002 and a trapezium of 1 and 0.9167 over 0.001.
  it('flexure-aci-318: the integrated curve has its closed form', () => {
    const answer = flexureAci318Section.run({ b: 0.3, d: 0.2, area: 0.001, f_c: 30e6, f_y: 420e6 }, {})
    if (!answer.ok) throw new Error(answer.says)
    const mean = (0.85 * (0.002 * (2 / 3) + 0.001 * (1 - 0.15 / 3.6))) / 0.003
    expect(answer.values.x).toBeCloseTo((420e6 * 0.001) / (mean * 30e6 * 0.3), 9)
  })

  it('flexure-aci-318: metric units give the same capacity', () => {
    expect(run({}, 'SI').si('M_R') / run().si('M_R')).toBeCloseTo(1, 10)
    expect(run({}, 'SI').shown('M_R')).toMatch(/ kN\*m\/m$/)
  })

  it('flexure-aci-318: the section draws its bars near the face in tension', () => {
    const drawing = drawingOf(flexureAci318, { ...base, face: 'top' })
    expect(drawing.says).toContain('near the top face')
    expect(drawing.says).toContain('neutral axis')
  })
})
