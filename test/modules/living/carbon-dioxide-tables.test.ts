import { describe, expect, it } from 'vitest'
import { basalRate, breathers, carbonDioxideGeneration } from '../../../src/modules/living/carbon-dioxide-tables.ts'
import { readRows } from '../../published/read-rows.ts'

const rows = readRows('carbon-dioxide-generation.csv')
const mets = ['1.0', '1.2', '1.4', '1.6', '2.0', '3.0', '4.0']
const names = Object.keys(breathers)
const plain = (row: Readonly<Record<string, string>>) =>
  `${row.sex} ${(row.age_years ?? '').replace('<1', 'under 1').replace('>=80', '80 and over').replace('<', 'under ')}`

describe('carbon dioxide tables', () => {
  it('carbon-dioxide-tables: the rows are those of the published table, in its order', () => {
    const published = rows.map(plain)
    expect(names).toEqual(published)
  })

  it.each(rows)('carbon-dioxide-tables: $sex $age_years is as published, cell by cell', row => {
    const index = rows.indexOf(row)
    expect(carbonDioxideGeneration.cells[index]).toEqual(mets.map(met => row[`met_${met}`]))
    expect(basalRate.cells[index]).toEqual([row.BMR_MJ_per_day])
    expect(Object.values(breathers)[index]).toBe(`mean body mass ${row.mean_body_mass_kg} kg`)
  })

  // Table and formula are of one paper. At 1.0 met seven cells lie up to 0.00009 L/s under the formula; all others agree within half
  // a printed digit of the cell and of the factor 0.000484.
  it('carbon-dioxide-tables: every cell agrees with the published formula 0.000484 BMR M', () => {
    for (const [index, cells] of carbonDioxideGeneration.cells.entries()) {
      for (const [column, cell] of cells.entries()) {
        const product = Number(basalRate.cells[index]?.[0]) * Number(mets[column])
        const rounding = column === 0 ? 0.000095 : 0.00005 + 0.0000005 * product
        expect(Math.abs(Number(cell) - 0.000484 * product)).toBeLessThanOrEqual(rounding)
      }
    }
  })

  it('carbon-dioxide-tables: more activity gives more carbon dioxide, in every row', () => {
    for (const cells of carbonDioxideGeneration.cells)
      for (const [column, cell] of cells.entries())
        if (column > 0) expect(Number(cell)).toBeGreaterThan(Number(cells[column - 1]))
  })
})
