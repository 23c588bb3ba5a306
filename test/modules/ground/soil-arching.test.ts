import { describe, expect, it } from 'vitest'
import { soilArching } from '../../../src/modules/ground/soil-arching.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const base = { span: '3 m', cover: '3 m', gamma: '18 kN/m^3', phi: '30 deg', surcharge: '0 kPa' }
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(soilArching, { ...base, ...more }, { units })

describe('arching', () => {
  it('soil-arching: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(soilArching, soilArching.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('p_arch')).toBeCloseTo(run().si('p_arch'), 6)
  })

  it("soil-arching: without cohesion it is Marston's coefficient of a trench, at every entry", () => {
    // Coefficients computed apart from this program for the five friction numbers of Spangler and Handy (memory)
    const rows = publishedTable('ground-marston-cd', 'ground')
    expect(rows).toHaveLength(12)
    for (const { H_over_B, ...columns } of rows) {
      for (const [column, printed] of Object.entries(columns)) {
        const K_s = `${column.replace('Kmu_', '')} / tan(30 deg)`
        const at = run({ span: '1 m', cover: `${H_over_B} m`, gamma: '1 kN/m^3', K_s })
        expect(Math.abs(at.si('p_arch') / 1000 - Number(printed)), `${column} ${H_over_B}`).toBeLessThanOrEqual(
          0.5001e-4,
        )
      }
    }
  })

  it('soil-arching: never more than the overburden, and nearly it with little friction or cover', () => {
    for (const phi of ['1 deg', '20 deg', '45 deg'])
      for (const cover of ['0.1 m', '1 m', '10 m'])
        expect(run({ phi, cover, surcharge: '10 kPa' }).si('r_arch')).toBeLessThan(1)
    expect(run({ phi: '0.01 deg' }).si('r_arch')).toBeCloseTo(1, 3)
    expect(run({ cover: '1 mm' }).si('r_arch')).toBeCloseTo(1, 3)
  })

  it('soil-arching: slices marched down give the same, with cohesion and surcharge', () => {
    for (const more of [
      {},
      { c: '5 kPa' },
      { surcharge: '50 kPa' },
      { c: '5 kPa', surcharge: '50 kPa', cover: '12 m' },
    ]) {
      const at = run(more)
      expect(at.agrees).toHaveLength(1)
      for (const { difference, band } of at.agrees) expect(difference).toBeLessThanOrEqual(band)
    }
  })

  it('soil-arching: refuses a strip that its cohesion holds up', () => {
    expect(run({ c: '26.9 kPa' }).errors).toEqual([])
    expect(run({ c: '27.1 kPa' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
  })

  it('soil-arching: checks nothing: the plain overburden is the load', () => {
    expect(run().si('p_plain')).toBeCloseTo(54000, 6)
    expect(JSON.stringify(soilArching.steps)).not.toContain('"kind":"check"')
  })
})
