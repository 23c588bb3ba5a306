import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flexureIs456 } from '../../../src/modules/concrete/flexure-is-456.ts'
import { flexureIs456Section } from '../../../src/modules/concrete/flexure-is-456-section.ts'
import { runModule } from '../run-module.ts'

const base = {
  moment: '10 kN*m/m',
  thickness: '180 mm',
  cover: '25 mm',
  bar_size: '10 mm',
  spacing: '100 mm',
  f_ck: '20 MPa',
  steel: 'Fe 415',
}
type Changes = Partial<typeof base> & { outer_bar?: string; width?: string; aggregate?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(flexureIs456, { ...base, ...changes }, { units })

/** Spacing at which 10 mm bars give this much steel on a metre. */
const spacingFor = (area: number) => `${(Math.PI * 25 * 1000) / area} mm`

describe('flexure by IS 456', () => {
  it('flexure-is-456: the example evaluates without a message and both methods agree', () => {
    const result = runModule(flexureIs456, flexureIs456.example)
    expect(result.diagnostics).toEqual([])
    expect(result.agrees).toHaveLength(2)
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  // SP 16 Table D (memory): M_u,lim/(b d^2) of M20 and M25 with Fe 415, 0.3 %.
  it.each([
    ['20 MPa', 2.76],
    ['25 MPa', 3.45],
  ])('flexure-is-456: limiting moment over b d^2 with %s and Fe 415 is %d MPa', (f_ck, printed) => {
    const result = run({ f_ck })
    const factor = result.si('M_lim') / (1 * 0.15 ** 2) / 1e6
    expect(Math.abs(factor / printed - 1)).toBeLessThanOrEqual(0.003)
  })

  // SP 16 Table E (memory): limiting steel of M20, 0.5 %: the neutral axis then lies at its limit.
  it.each([
    ['Fe 250', 1.76],
    ['Fe 415', 0.96],
    ['Fe 500', 0.76],
  ])('flexure-is-456: with %s the limiting steel of M20 is %d %%', (steel, printed) => {
    const result = run({ steel, spacing: spacingFor((printed / 100) * 1000 * 150) })
    expect(result.si('p_t')).toBeCloseTo(printed / 100, 10)
    expect(Math.abs(result.si('x_u') / result.si('x_max') - 1)).toBeLessThanOrEqual(0.005)
  })

  it('flexure-is-456: bars of exactly the steel needed carry exactly the moment', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 58, noNaN: true }),
        fc.constantFrom('20 MPa', '30 MPa', '40 MPa'),
        fc.constantFrom('Fe 250', 'Fe 415', 'Fe 500'),
        (moment, f_ck, steel) => {
          const asked = { moment: `${moment} kN*m/m`, f_ck, steel }
          const needed = run(asked).si('A_req') * 1e6
          expect(run({ ...asked, spacing: spacingFor(needed) }).si('M_R') / (moment * 1000)).toBeCloseTo(1, 8)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('flexure-is-456: plane strains give the same moment within 0.5 % wherever the steel yields', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 1400, noNaN: true }),
        fc.constantFrom('20 MPa', '35 MPa', '55 MPa'),
        fc.constantFrom('Fe 250', 'Fe 415', 'Fe 500'),
        (area, f_ck, steel) => {
          const result = run({ spacing: spacingFor(area), f_ck, steel })
          fc.pre(result.si('x_u') <= result.si('x_max'))
          expect(result.agrees).toHaveLength(2)
          for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
          expect(result.si('M_R')).toBeLessThan(0.87 * result.si('f_y') * area * 1e-6 * 0.15)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('flexure-is-456: more steel, more depth or stronger concrete never lessen the capacity', () => {
    const capacity = (changes: Changes) => run(changes).si('M_R')
    expect(capacity({ spacing: '90 mm' })).toBeGreaterThan(capacity({}))
    expect(capacity({ thickness: '190 mm' })).toBeGreaterThan(capacity({}))
    expect(capacity({ f_ck: '25 MPa' })).toBeGreaterThan(capacity({}))
    expect(capacity({ cover: '30 mm' })).toBeLessThan(capacity({}))
  })

  it('flexure-is-456: a wider strip scales steel and leaves the moment per width alone', () => {
    const [one, two] = [run(), run({ width: '2000 mm' })]
    expect(two.si('A_st')).toBeCloseTo(2 * one.si('A_st'), 12)
    expect(two.si('A_need')).toBeCloseTo(2 * one.si('A_need'), 12)
    expect(two.si('M_R')).toBeCloseTo(one.si('M_R'), 6)
  })

  it('flexure-is-456: the sign of the moment does not count, and no moment asks for the least steel only', () => {
    expect(run({ moment: '-10 kN*m/m' }).si('A_req')).toBe(run().si('A_req'))
    const none = run({ moment: '0 kN*m/m' })
    expect(none.errors).toEqual([])
    expect(none.si('A_req')).toBe(0)
    expect(none.si('A_need')).toBe(none.si('A_min'))
  })

  it('flexure-is-456: a second layer lies deeper', () => {
    expect(run({ outer_bar: '12 mm' }).si('d')).toBeCloseTo(0.15 - 0.012, 12)
  })

  // IS 456 cl. 26.5.2.1 (memory): 0.15 % of mild steel, 0.12 % of deformed bars, of the gross section.
  it.each([
    ['Fe 250', 270],
    ['Fe 415', 216],
    ['Fe 500', 216],
  ])('flexure-is-456: least steel of 180 mm with %s is %d mm2/m', (steel, least) => {
    expect(run({ steel }).si('A_min') * 1e6).toBeCloseTo(least, 8)
  })

  it('flexure-is-456: each check turns at its limit', () => {
    const holds = (name: string, changes: Changes) => run(changes).satisfied(name)
    expect(holds('spacing_most', { spacing: '300 mm' })).toBe(true)
    expect(holds('spacing_most', { spacing: '301 mm' })).toBe(false)
    expect(holds('spacing_most', { thickness: '110 mm', cover: '25 mm', spacing: '240 mm' })).toBe(true)
    expect(holds('spacing_most', { thickness: '110 mm', cover: '25 mm', spacing: '241 mm' })).toBe(false)
    expect(holds('spacing_clear', { spacing: '35 mm' })).toBe(true)
    expect(holds('spacing_clear', { spacing: '34 mm' })).toBe(false)
    expect(holds('bar_largest', { bar_size: '22.5 mm' })).toBe(true)
    expect(holds('bar_largest', { bar_size: '23 mm' })).toBe(false)
    expect(holds('area', { spacing: '360 mm', moment: '1 kN*m/m' })).toBe(true)
    expect(holds('area', { spacing: '365 mm', moment: '1 kN*m/m' })).toBe(false)
    const capacity = run().si('M_R') / 1000
    expect(holds('capacity', { moment: `${capacity - 0.01} kN*m/m` })).toBe(true)
    expect(holds('capacity', { moment: `${capacity + 0.01} kN*m/m` })).toBe(false)
  })

  it('flexure-is-456: an over-reinforced section is not satisfied and counts the limiting moment only', () => {
    const result = run({ spacing: '40 mm' })
    expect(result.satisfied('under_reinforced')).toBe(false)
    expect(result.si('M_R')).toBeCloseTo(result.si('M_lim'), 8)
    expect(result.si('M_R_strain')).toBeGreaterThan(result.si('M_R'))
    expect(result.errors).toEqual([])
  })

  it('flexure-is-456: a moment past the limiting one is refused', () => {
    const most = run().si('M_lim') / 1000
    expect(run({ moment: `${most * 0.9999} kN*m/m` }).errors).toEqual([])
    const over = run({ moment: `${most * 1.0001} kN*m/m` })
    expect(over.errors.map(fault => fault.rule)).toEqual(['limit-exceeded'])
    expect(over.has('A_req')).toBe(false)
  })

  it.each([
    [{ f_ck: '19.9 MPa' }, 'value-outside-range'],
    [{ f_ck: '55.1 MPa' }, 'value-outside-range'],
    [{ cover: '175 mm' }, 'limit-exceeded'],
    [{ spacing: '10 mm' }, 'limit-exceeded'],
    [{ spacing: '0 mm' }, 'value-outside-range'],
    [{ steel: 'Fe 550' }, 'choice-unknown'],
    [{ moment: '10 kN*m' }, 'dimension-mismatch'],
  ])('flexure-is-456: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it.each([
    ['depth', { d: 0 }],
    ['steel', { area: 0 }],
    ['steel to speak of', { area: 1e-200 }],
  ])('flexure-is-456: the section method refuses a section without %s', (_, changes) => {
    const numbers = { b: 1, d: 0.15, area: 0.001, f_ck: 20e6, f_y: 415e6, ...changes }
    expect(flexureIs456Section.run(numbers, {})).toMatchObject({ ok: false, says: expect.stringContaining('balance') })
  })

  // The integrals of the stress block (closed form): 17/21 of the plateau, centroid 99/238 of x from the edge.
  it('flexure-is-456: the integrated block is 17/21 of its plateau at 99/238 of the depth', () => {
    const answer = flexureIs456Section.run({ b: 1, d: 0.15, area: 0.001, f_ck: 20e6, f_y: 415e6 }, {})
    if (!answer.ok) throw new Error(answer.says)
    const { x = 0, moment = 0, steel = 0 } = answer.values
    expect(steel).toBeCloseTo(0.87 * 415e6, 3)
    expect(x).toBeCloseTo((0.87 * 415e6 * 0.001) / (((0.67 / 1.5) * 17 * 20e6) / 21), 9)
    expect(moment).toBeCloseTo(0.87 * 415e6 * 0.001 * (0.15 - (99 / 238) * x), 3)
  })

  it('flexure-is-456: American units give the same capacity', () => {
    const us = run({}, 'US')
    expect(us.si('M_R') / run().si('M_R')).toBeCloseTo(1, 10)
    expect(us.shown('M_R')).toMatch(/ lbf\*ft\/ft$/)
  })
})
