import { describe, expect, it } from 'vitest'
import { stackC, stackD } from '../../../src/modules/shielding/gamma-tables.ts'
import { readRows } from '../../published/read-rows.ts'

const cell = (table: typeof stackC, material: string, energy: string): number => {
  const [row, column] = [table.row.keys.indexOf(material), (table.column?.keys ?? []).indexOf(energy)]
  return Number(table.cells[row]?.[column])
}

const rows = readRows('build-up-deep.csv').map(row => {
  const { material = '', energy_MeV = '' } = row
  const [x, B, energy] = [Number(row.mfp), Number(row.B), `${energy_MeV} MeV`]
  const fit = 1 + cell(stackC, material, energy) * x * Math.exp(cell(stackD, material, energy) * x)
  return { set: row.set, material, energy, x, B, fit, sigma: Number(row.sigma_percent) / 100 }
})
const computed = rows.filter(({ set }) => set === 'computed')

describe('build-up past the range of the fits', () => {
  it('gamma-slab: to 10 mean free paths the fit follows factors computed by a second program within 11 %', () => {
    const near = computed.filter(({ x }) => x <= 10)
    expect(near).toHaveLength(60)
    for (const { fit, B } of near) expect(Math.abs(fit / B - 1)).toBeLessThan(0.11)
  })

  it('gamma-slab: from 12 to 20 mean free paths the fit lies above every factor, by at most 120 %: the safe side', () => {
    const deep = rows.filter(({ x }) => x >= 12)
    expect(deep).toHaveLength(60)
    for (const { fit, B } of deep) {
      expect(fit / B).toBeGreaterThan(1)
      expect(fit / B).toBeLessThan(2.2)
    }
  })

  it('gamma-slab: the computed factors and the older tables stand within 5 % of each other at 15 and 20 mean free paths', () => {
    const older = rows.filter(({ set }) => set !== 'computed')
    expect(older).toHaveLength(12)
    for (const { material, energy, x, B } of older) {
      const own = computed.find(row => row.material === material && row.energy === energy && row.x === x)
      expect(Math.abs((own?.B ?? 0) / B - 1)).toBeLessThan(0.05)
      expect(own?.sigma).toBeLessThan(0.01)
    }
  })
})
