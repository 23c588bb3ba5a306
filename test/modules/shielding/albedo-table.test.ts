import { describe, expect, it } from 'vitest'
import { concreteAlbedo } from '../../../src/modules/shielding/albedo-table.ts'
import { readRows } from '../../published/read-rows.ts'

const rows = readRows('concrete-albedo.csv')
const computed = rows.filter(({ set }) => set === 'computed')
const directions = ['deg_0', 'deg_30', 'deg_45', 'deg_60', 'deg_75']

describe('albedo of concrete', () => {
  it('albedo-table: is the column straight back of the computed set, cell by cell', () => {
    if (concreteAlbedo.row.kind !== 'numbers') throw new Error('energies are numbers')
    expect(concreteAlbedo.row.keys).toEqual(computed.map(row => row.energy_MeV))
    expect(concreteAlbedo.cells.map(([cell]) => cell)).toEqual(computed.map(row => row.deg_0))
  })

  it('albedo-table: straight back is the largest direction of every row, and the softest row the largest', () => {
    for (const row of rows) {
      const [straight = 0, ...others] = directions.map(name => Number(row[name]))
      expect(Math.max(...others)).toBeLessThan(straight)
    }
    const column = computed.map(row => Number(row.deg_0))
    expect(column).toEqual([...column].sort((a, b) => b - a))
  })

  it('albedo-table: the total is what the directions add up to, within their coarse steps, and below 1', () => {
    // 2 pi sin(theta) summed by trapezoids between the printed angles, the first over its whole bin, nothing at 90 degrees
    const angles = [0, 30, 45, 60, 75, 90].map(degrees => (degrees * Math.PI) / 180)
    for (const row of computed) {
      const height = [...directions.map(name => Number(row[name])), 0].map(
        (albedo, index) => 2 * Math.PI * albedo * Math.sin(angles[index] ?? 0),
      )
      const total = angles
        .slice(1)
        .reduce((sum, to, i) => sum + ((to - (angles[i] ?? 0)) * ((height[i] ?? 0) + (height[i + 1] ?? 0))) / 2, 0)
      expect(Math.abs(total / Number(row.total) - 1)).toBeLessThan(0.08)
      expect(Number(row.total)).toBeLessThan(1)
    }
  })

  it('albedo-table: NCRP 151, from memory, lies below it straight back, by 30 % at most', () => {
    for (const ncrp of rows.filter(({ set }) => set === 'ncrp')) {
      const ours = computed.find(row => row.energy_MeV === ncrp.energy_MeV)
      const ratio = Number(ncrp.deg_0) / Number(ours?.deg_0)
      expect(ratio).toBeLessThan(1)
      expect(ratio).toBeGreaterThan(0.7)
    }
  })
})
