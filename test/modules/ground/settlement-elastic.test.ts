import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { settlementElastic } from '../../../src/modules/ground/settlement-elastic.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const base = {
  width: '2 m',
  length: '4 m',
  depth: '0 m',
  pressure: '150 kPa',
  s_allow: '25 mm',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '3 m',
  layers: [{ thickness: '4 m', E: '40 MPa', nu: '0.5' }],
  beneath: 'rock',
}
const run = (more: Readonly<Record<string, CaseInput>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(settlementElastic, { ...base, ...more }, { units })

describe('immediate settlement', () => {
  it('settlement-elastic: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(settlementElastic, settlementElastic.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('s_centre')).toBeCloseTo(run().si('s_centre'), 12)
  })

  it('settlement-elastic: both factors are those of the table', () => {
    // Closed forms of Steinbrenner, tabulated apart from this program
    const rows = publishedTable('ground-steinbrenner', 'ground')
    expect(rows).toHaveLength(42)
    for (const { M, N, I1, I2 } of rows) {
      const at = run({ length: `${2 * Number(M)} m`, layers: [{ thickness: `${N} m`, E: '40 MPa', nu: '0.5' }] })
      expect(Math.abs(at.si('I_1_1') - Number(I1)), `${M} ${N}`).toBeLessThanOrEqual(0.5001e-4)
      expect(Math.abs(at.si('I_2_1') - Number(I2)), `${M} ${N}`).toBeLessThanOrEqual(0.5001e-4)
    }
  })

  it('settlement-elastic: a layer cut in two settles as much as whole', () => {
    const cut = run({
      layers: [
        { thickness: '1 m', E: '40 MPa', nu: '0.3' },
        { thickness: '3 m', E: '40 MPa', nu: '0.3' },
      ],
    })
    const whole = run({ layers: [{ thickness: '4 m', E: '40 MPa', nu: '0.3' }] })
    expect(cut.si('s_centre') / whole.si('s_centre')).toBeCloseTo(1, 12)
  })

  it('settlement-elastic: strain added up gives the same, for any base and layers', () => {
    const of = (least: number, most: number) => fc.integer({ min: least, max: most })
    fc.assert(
      fc.property(
        of(5, 100),
        of(10, 40),
        of(5, 200),
        of(5, 200),
        of(0, 50),
        of(0, 50),
        of(1, 20),
        (w, r, h, k, n, o, e) => {
          const at = run({
            width: `${w / 10} m`,
            length: `${(w * r) / 100} m`,
            layers: [
              { thickness: `${h / 10} m`, E: '20 MPa', nu: `${n / 100}` },
              { thickness: `${k / 10} m`, E: `${10 * e} MPa`, nu: `${o / 100}` },
            ],
          })
          expect(at.agrees).toHaveLength(1)
          for (const { difference, band } of at.agrees) expect(difference).toBeLessThanOrEqual(band)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('settlement-elastic: goes with pressure, against modulus, and is net of the ground dug out', () => {
    const s = run().si('s_centre')
    expect(run({ pressure: '300 kPa' }).si('s_centre')).toBeCloseTo(2 * s, 12)
    expect(run({ layers: [{ thickness: '4 m', E: '80 MPa', nu: '0.5' }] }).si('s_centre')).toBeCloseTo(s / 2, 12)
    const deep = run({ depth: '4 m' })
    expect(deep.si('p_net')).toBeCloseTo((150 - 18 * 3 - 20) * 1000, 6)
    expect(deep.si('s_centre') / s).toBeCloseTo(76 / 150, 12)
    expect(run().si('s_stiff')).toBeCloseTo(0.93 * s, 12)
  })

  it('settlement-elastic: the check turns at the settlement that is allowed', () => {
    const s = run().si('s_centre')
    expect(run({ s_allow: `${1.0001 * s} m` }).satisfied('settles_little')).toBe(true)
    expect(run({ s_allow: `${0.9999 * s} m` }).satisfied('settles_little')).toBe(false)
  })

  it('settlement-elastic: says where the base presses no more than the ground dug out, and settles nothing', () => {
    const kept = (pressure: string) => {
      const at = run({ depth: '4 m', pressure })
      return [at.limits.find(({ says }) => says.includes('dug out'))?.kept, at.si('s_centre') > 0]
    }
    expect(kept('74.1 kPa')).toEqual([true, true])
    expect(kept('73.9 kPa')).toEqual([false, false])
  })

  it('settlement-elastic: says where soft ground goes on below the layers', () => {
    const kept = (thickness: string, beneath: string) =>
      run({ beneath, layers: [{ thickness, E: '40 MPa', nu: '0.5' }] }).limits.find(({ says }) =>
        says.includes('twice the width'),
      )?.kept
    expect([kept('4 m', 'soil'), kept('3.9 m', 'soil'), kept('3.9 m', 'rock')]).toEqual([true, false, undefined])
  })

  it('settlement-elastic: refuses a length less than the width, and a ratio over a half', () => {
    expect(run({ length: '1.9 m' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    const nu = (value: string) => run({ layers: [{ thickness: '4 m', E: '40 MPa', nu: value }] }).errors.length
    expect([nu('0.5'), nu('0.51')]).toEqual([0, 1])
  })

  it('settlement-elastic: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => run({ gamma_sat }).errors.map(({ rule }) => rule)
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
