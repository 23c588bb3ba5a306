import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flexureEn1992 } from '../../../src/modules/concrete/flexure-en-1992.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const base = {
  moment: '20 kN*m/m',
  thickness: '180 mm',
  cover: '25 mm',
  bar_size: '10 mm',
  spacing: '100 mm',
  f_ck: '25 MPa',
  f_yk: '500 MPa',
}
type Changes = Partial<typeof base> & { outer_bar?: string; alpha_cc?: string; gamma_s?: string; aggregate?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(flexureEn1992, { ...base, ...changes }, { units })
const spacingFor = (area: number) => `${(Math.PI * 25 * 1000) / area} mm`

describe('flexure by EN 1992', () => {
  it('flexure-en-1992: the example evaluates without a message and both methods agree', () => {
    const result = runModule(flexureEn1992, flexureEn1992.example)
    expect(result.diagnostics).toEqual([])
    expect(result.agrees).toHaveLength(2)
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  // K limit 0.167 at x = 0.45 d with 0.85/1.5 (design aids; memory).
  it('flexure-en-1992: the limiting moment is 0.167 of b d^2 f_ck', () => {
    expect(Math.abs(run().si('M_lim') / (0.15 ** 2 * 25e6) - 0.167)).toBeLessThanOrEqual(0.0005)
  })

  it('flexure-en-1992: bars of exactly the steel needed carry the moment, exactly where the lever arm is not cut', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 80, noNaN: true }),
        fc.constantFrom('25 MPa', '35 MPa', '50 MPa'),
        (moment, f_ck) => {
          const asked = { moment: `${moment} kN*m/m`, f_ck }
          const first = run(asked)
          const carried = run({ ...asked, spacing: spacingFor(first.si('A_req') * 1e6) }).si('M_R') / (moment * 1000)
          if (first.si('z_c') <= 0.95 * 0.15) expect(carried).toBeCloseTo(1, 8)
          else expect(carried).toBeGreaterThan(1)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('flexure-en-1992: plane strains give the same within their bands wherever the neutral axis is within its limit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 1800, noNaN: true }),
        fc.constantFrom('12 MPa', '25 MPa', '50 MPa'),
        fc.constantFrom('400 MPa', '500 MPa', '600 MPa'),
        (area, f_ck, f_yk) => {
          const result = run({ spacing: spacingFor(area), f_ck, f_yk, moment: '1 kN*m/m' })
          fc.pre(result.si('x') <= result.si('x_max'))
          expect(result.agrees).toHaveLength(2)
          for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('flexure-en-1992: more steel, more depth, stronger concrete or a higher long-term factor never lessen the capacity', () => {
    const capacity = (changes: Changes) => run(changes).si('M_R')
    expect(capacity({ spacing: '90 mm' })).toBeGreaterThan(capacity({}))
    expect(capacity({ thickness: '190 mm' })).toBeGreaterThan(capacity({}))
    expect(capacity({ f_ck: '30 MPa' })).toBeGreaterThan(capacity({}))
    expect(capacity({ alpha_cc: '1' })).toBeGreaterThan(capacity({}))
    expect(capacity({ cover: '30 mm' })).toBeLessThan(capacity({}))
    expect(run({ outer_bar: '12 mm' }).si('d')).toBeCloseTo(0.138, 12)
  })

  // EN 1992-1-1 9.1N (memory): 0.26 f_ctm / f_yk, at least 0.0013; f_ctm 2.6 MPa of C25, printed in Table 3.1.
  it('flexure-en-1992: least steel by the tensile strength, and never under 0.0013', () => {
    expect(Math.abs(run().si('f_ctm') / 1e6 - 2.6)).toBeLessThanOrEqual(0.05)
    expect(run().si('rho_min')).toBeCloseTo((0.26 * run().si('f_ctm')) / 500e6, 12)
    expect(run({ f_ck: '20 MPa', f_yk: '600 MPa' }).si('rho_min')).toBe(0.0013)
  })

  it('flexure-en-1992: each check turns at its limit', () => {
    const holds = (name: string, changes: Changes) => run(changes).satisfied(name)
    const least = run({ moment: '1 kN*m/m' }).si('A_min') * 1e6
    expect(holds('area', { moment: '1 kN*m/m', spacing: spacingFor(1.0001 * least) })).toBe(true)
    expect(holds('area', { moment: '1 kN*m/m', spacing: spacingFor(0.9999 * least) })).toBe(false)
    expect(holds('spacing_most', { spacing: '250 mm' })).toBe(true)
    expect(holds('spacing_most', { spacing: '251 mm' })).toBe(false)
    const thin = { thickness: '110 mm', moment: '1 kN*m/m' }
    expect(holds('spacing_most', { ...thin, spacing: '220 mm' })).toBe(true)
    expect(holds('spacing_most', { ...thin, spacing: '221 mm' })).toBe(false)
    expect(holds('spacing_clear', { spacing: '35 mm' })).toBe(true)
    expect(holds('spacing_clear', { spacing: '34 mm' })).toBe(false)
    expect(holds('spacing_clear', { spacing: '30 mm', aggregate: '10 mm' })).toBe(true)
    expect(holds('spacing_clear', { spacing: '29 mm', aggregate: '10 mm' })).toBe(false)
    const capacity = run().si('M_R')
    expect(holds('capacity', { moment: `${0.9999 * capacity} N*m/m` })).toBe(true)
    expect(holds('capacity', { moment: `-${1.0001 * capacity} N*m/m` })).toBe(false)
  })

  it('flexure-en-1992: an over-reinforced section is not satisfied and counts the limiting moment only', () => {
    const result = run({ spacing: '35 mm' })
    expect(result.satisfied('under_reinforced')).toBe(false)
    expect(result.si('M_R')).toBeCloseTo(result.si('M_lim'), 6)
    expect(result.si('M_R_strain')).toBeGreaterThan(result.si('M_R'))
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  it('flexure-en-1992: a moment past the limiting one is refused', () => {
    const most = run().si('M_lim')
    expect(run({ moment: `${0.9999 * most} N*m/m` }).errors).toEqual([])
    const over = run({ moment: `${1.0001 * most} N*m/m` })
    expect(over.errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
    expect(over.has('A_req')).toBe(false)
  })

  it.each([
    [{ f_ck: '11.9 MPa' }, 'value-outside-range'],
    [{ f_ck: '50.1 MPa' }, 'value-outside-range'],
    [{ f_yk: '601 MPa' }, 'value-outside-range'],
    [{ gamma_s: '1.16' }, 'value-outside-range'],
    [{ cover: '175 mm' }, 'limit-exceeded'],
    [{ spacing: '10 mm' }, 'limit-exceeded'],
    [{ moment: '10 kN*m' }, 'dimension-mismatch'],
  ])('flexure-en-1992: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('flexure-en-1992: little effective depth is said', () => {
    const kept = (cover: string) => run({ cover, moment: '1 kN*m/m' }).limits[1]?.kept
    expect(kept('85 mm')).toBe(true)
    expect(kept('86 mm')).toBe(false)
  })

  it('flexure-en-1992: American units give the same capacity', () => {
    expect(run({}, 'US').si('M_R') / run().si('M_R')).toBeCloseTo(1, 10)
    expect(run({}, 'US').shown('M_R')).toMatch(/ lbf\*ft\/ft$/)
  })

  it('flexure-en-1992: the section draws its bars near the face in tension', () => {
    expect(drawingOf(flexureEn1992, { ...base, face: 'top' }).says).toContain('near the top face')
  })
})
