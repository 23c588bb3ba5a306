import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { shearStrength } from '../../../src/modules/concrete/is456-shear.ts'
import { oneWayShearIs456 } from '../../../src/modules/concrete/one-way-shear-is-456.ts'
import { runModule } from '../run-module.ts'

const base = {
  shear: '80 kN/m',
  thickness: '300 mm',
  effective_depth: '250 mm',
  steel_ratio: '0.5 percent',
  f_ck: '20 MPa',
}
type Changes = Partial<typeof base> & { thrust?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(oneWayShearIs456, { ...base, ...changes }, { units })

describe('one-way shear by IS 456', () => {
  it('one-way-shear-is-456: the example evaluates without a message and both methods agree', () => {
    const result = runModule(oneWayShearIs456, oneWayShearIs456.example)
    expect(result.diagnostics).toEqual([])
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  // IS 456 Table 19 (M20 looked up, M25 to M40 memory).
  it('one-way-shear-is-456: every entry of Table 19 is as published', () => {
    const lines = readFileSync(new URL('./published/concrete-is456-table19.csv', import.meta.url), 'utf8').split('\n')
    const rows = lines.filter(line => /^\d/.test(line)).map(line => line.split(',').map(Number))
    expect(rows.map(([steel]) => steel)).toEqual(shearStrength.row.keys.map(Number))
    expect(rows.map(row => row.slice(2))).toEqual(shearStrength.cells.map(row => row.map(Number)))
  })

  it('one-way-shear-is-456: the formula keeps to its band over the whole table, between its rows too', () => {
    for (const f_ck of ['20 MPa', '27 MPa', '33 MPa', '40 MPa', '50 MPa'])
      for (const steel of [0.12, 0.15, 0.2, 0.3, 0.37, 0.6, 0.9, 1.6, 2.1, 2.4, 2.6, 3, 4]) {
        const { agrees } = run({ f_ck, steel_ratio: `${steel} percent` })
        expect(agrees).toHaveLength(1)
        for (const { difference, band } of agrees) expect(difference).toBeLessThanOrEqual(band)
      }
  })

  // tau_c 0.48 MPa, factor 1: 120 kN/m on 250 mm.
  it('one-way-shear-is-456: the check turns where the shear is what the concrete carries', () => {
    expect(run().si('V_c')).toBeCloseTo(120000, 6)
    expect(run({ shear: '120 kN/m' }).satisfied('no_links')).toBe(true)
    expect(run({ shear: '120.1 kN/m' }).satisfied('no_links')).toBe(false)
    expect(run({ shear: '-120.1 kN/m' }).satisfied('no_links')).toBe(false)
  })

  it('one-way-shear-is-456: a slab may have half the greatest stress, 2.8 MPa of M20', () => {
    expect(run({ shear: '350 kN/m' }).satisfied('slab_limit')).toBe(true)
    expect(run({ shear: '350.1 kN/m' }).satisfied('slab_limit')).toBe(false)
  })

  it.each([
    ['120 mm', 1.3],
    ['150 mm', 1.3],
    ['187.5 mm', 1.225],
    ['300 mm', 1],
    ['500 mm', 1],
  ])('one-way-shear-is-456: a slab of %s has the factor %d', (thickness, factor) => {
    expect(run({ thickness, effective_depth: '100 mm' }).si('k_s')).toBeCloseTo(factor, 12)
  })

  it('one-way-shear-is-456: steel and strength count within the table only', () => {
    expect(run({ steel_ratio: '0.12 percent' }).si('tau_c')).toBe(run({ steel_ratio: '0.15 percent' }).si('tau_c'))
    expect(run({ steel_ratio: '4 percent' }).si('tau_c')).toBe(run({ steel_ratio: '3 percent' }).si('tau_c'))
    expect(run({ f_ck: '60 MPa' }).si('tau_c')).toBe(run({ f_ck: '40 MPa' }).si('tau_c'))
  })

  // IS 456 cl. 40.2.2 (memory): 1 + 3 P/(A f_ck), at most 1.5.
  it('one-way-shear-is-456: thrust helps, by half at the most', () => {
    expect(run({ thrust: '600 kN/m' }).si('V_c') / run().si('V_c')).toBeCloseTo(1.3, 9)
    expect(run({ thrust: '1100 kN/m' }).si('V_c') / run().si('V_c')).toBeCloseTo(1.5, 9)
  })

  it('one-way-shear-is-456: more steel, stronger concrete and more depth carry more', () => {
    const carried = (changes: Changes) => run(changes).si('V_c')
    expect(carried({ steel_ratio: '0.6 percent' })).toBeGreaterThan(carried({}))
    expect(carried({ f_ck: '25 MPa' })).toBeGreaterThan(carried({}))
    expect(carried({ effective_depth: '260 mm' })).toBeGreaterThan(carried({}))
  })

  it.each([
    [{ effective_depth: '300 mm' }, 'limit-exceeded'],
    [{ f_ck: '19.9 MPa' }, 'value-outside-range'],
    [{ steel_ratio: '0' }, 'value-outside-range'],
    [{ thrust: '-1 kN/m' }, 'value-outside-range'],
    [{ shear: '80 kN' }, 'dimension-mismatch'],
  ])('one-way-shear-is-456: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('one-way-shear-is-456: too little steel is said', () => {
    const kept = (steel_ratio: string) => run({ steel_ratio }).limits.map(limit => limit.kept)
    expect(kept('0.12 percent')).toEqual([true, true])
    expect(kept('0.119 percent')).toEqual([true, false])
  })

  it('one-way-shear-is-456: American units give the same shear', () => {
    expect(run({}, 'US').si('V_c')).toBeCloseTo(120000, 6)
    expect(run({}, 'US').shown('V_c')).toMatch(/ plf$/)
  })
})
