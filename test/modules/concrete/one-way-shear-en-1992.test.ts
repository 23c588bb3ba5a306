import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { oneWayShearEn1992 } from '../../../src/modules/concrete/one-way-shear-en-1992.ts'
import { runModule } from '../run-module.ts'

const base = {
  shear: '80 kN/m',
  thickness: '240 mm',
  effective_depth: '200 mm',
  steel_ratio: '1 percent',
  f_ck: '30 MPa',
  alpha_cc: '1',
}
type Changes = Partial<typeof base> & { thrust?: string; gamma_c?: string; shear_support?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(oneWayShearEn1992, { ...base, ...changes }, { units })

describe('one-way shear by EN 1992', () => {
  it('one-way-shear-en-1992: the example evaluates without a message', () => {
    expect(runModule(oneWayShearEn1992, oneWayShearEn1992.example).diagnostics).toEqual([])
  })

  // The Concrete Centre, table 7 (looked up), 30 MPa: printed to 0.01.
  it('one-way-shear-en-1992: every entry of the published table is met', () => {
    const lines = readFileSync(new URL('./published/concrete-vrdc.csv', import.meta.url), 'utf8').split('\n')
    const depths = (lines.find(line => line.startsWith('rho')) ?? '')
      .split(',')
      .slice(1)
      .map(name => name.slice(1))
    const rows = lines.filter(line => /^\d/.test(line)).map(line => line.split(','))
    expect(rows).toHaveLength(8)
    for (const [steel, ...printed] of rows)
      printed.forEach((stress, i) => {
        const depth = depths[i]
        const ours = run({ effective_depth: `${depth} mm`, thickness: '1000 mm', steel_ratio: `${steel} percent` })
        expect(Math.abs(ours.si('v_Rd_c') / 1e6 - Number(stress)), `${steel} % at ${depth} mm`).toBeLessThanOrEqual(
          0.0051,
        )
      })
  })

  // The same (looked up): factors on the table for other strengths where the steel is over 0.4 %.
  it.each([
    ['25 MPa', 0.94],
    ['35 MPa', 1.05],
    ['40 MPa', 1.1],
    ['50 MPa', 1.19],
  ])('one-way-shear-en-1992: %s carries %d times as much as 30 MPa', (f_ck, factor) => {
    expect(Math.abs(run({ f_ck }).si('v_Rd_c') / run().si('v_Rd_c') - factor)).toBeLessThanOrEqual(0.006)
  })

  it('one-way-shear-en-1992: the least stress governs below about 0.39 % at 200 mm and 30 MPa', () => {
    expect(run({ steel_ratio: '0.38 percent' }).si('v_steel')).toBeLessThan(run().si('v_min'))
    expect(run({ steel_ratio: '0.40 percent' }).si('v_steel')).toBeGreaterThan(run().si('v_min'))
    expect(run({ steel_ratio: '0.1 percent' }).si('v_Rd_c')).toBe(run({ steel_ratio: '0.2 percent' }).si('v_Rd_c'))
  })

  it('one-way-shear-en-1992: the checks turn at their limits', () => {
    const most = run().si('V_Rd_c')
    expect(run({ shear: `${0.9999 * most} N/m` }).satisfied('no_links')).toBe(true)
    expect(run({ shear: `-${1.0001 * most} N/m` }).satisfied('no_links')).toBe(false)
    // 0.5 d nu f_cd = 0.5 * 0.2 * 0.528 * 20 MPa
    expect(run({ shear: '1056 kN/m' }).satisfied('crushing')).toBe(true)
    expect(run({ shear: '1056.1 kN/m' }).satisfied('crushing')).toBe(false)
  })

  it('one-way-shear-en-1992: where the shear at the support is given, crushing is checked with it', () => {
    const at = (shear_support: string) => run({ shear: '90 kN/m', shear_support })
    expect(at('1056 kN/m').satisfied('crushing')).toBe(true)
    expect(at('-1056.1 kN/m').satisfied('crushing')).toBe(false)
    expect(at('1056.1 kN/m').satisfied('no_links')).toBe(run({ shear: '90 kN/m' }).satisfied('no_links'))
    expect(at('90 kN/m').limits.at(-1)?.kept).toBe(true)
    expect(at('89.9 kN/m').limits.at(-1)?.kept).toBe(false)
  })

  it('one-way-shear-en-1992: steel past 2 % does not count, nor size under 200 mm', () => {
    expect(run({ steel_ratio: '3 percent' }).si('v_Rd_c')).toBe(run({ steel_ratio: '2 percent' }).si('v_Rd_c'))
    expect(run({ effective_depth: '150 mm' }).si('k_d')).toBe(2)
    expect(run({ effective_depth: '201 mm' }).si('k_d')).toBeLessThan(2)
  })

  it('one-way-shear-en-1992: thrust adds 0.15 of its stress, up to a fifth of the design strength', () => {
    const more = (thrust: string) => run({ thrust }).si('v_Rd_c') - run().si('v_Rd_c')
    expect(more('240 kN/m')).toBeCloseTo(0.15e6, 4)
    expect(more('2400 kN/m')).toBeCloseTo(0.15 * 4e6, 4)
  })

  it.each([
    [{ effective_depth: '240 mm' }, 'limit-exceeded'],
    [{ f_ck: '11.9 MPa' }, 'value-outside-range'],
    [{ f_ck: '90.1 MPa' }, 'value-outside-range'],
    [{ gamma_c: '1.51' }, 'value-outside-range'],
    [{ alpha_cc: '0.79' }, 'value-outside-range'],
    [{ shear: '80 kN' }, 'dimension-mismatch'],
  ])('one-way-shear-en-1992: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('one-way-shear-en-1992: American units give the same shear', () => {
    expect(run({}, 'US').si('V_Rd_c')).toBeCloseTo(run().si('V_Rd_c'), 6)
    expect(run({}, 'US').shown('V_Rd_c')).toMatch(/ plf$/)
  })
})
