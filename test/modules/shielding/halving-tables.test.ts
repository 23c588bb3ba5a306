import { describe, expect, it } from 'vitest'
import {
  bergerC,
  bergerD,
  halvingThickness,
  massAttenuation,
  photonEnergies,
  shieldMaterials,
  sourceSpectra,
} from '../../../src/modules/shielding/halving-tables.ts'
import { readRows } from '../../published/read-rows.ts'

const materials = Object.keys(shieldMaterials)
const columns = Object.keys(sourceSpectra)
const thicknesses = readRows('halving-thicknesses.csv')
const columnOf = (row: Readonly<Record<string, string>>) => (row.set === 'enw-1962' ? 'fallout 1962' : row.spectrum)
const printed = (material: string, column: string) =>
  thicknesses.find(row => row.material === material && columnOf(row) === column)

describe('halving thicknesses', () => {
  const pairs = materials.flatMap(material => columns.map(column => [material, column] as const))

  it.each(pairs)('halving-tables: %s under %s is as published, or empty where nothing is', (material, column) => {
    const cell = halvingThickness.cells[materials.indexOf(material)]?.[columns.indexOf(column)]
    const row = printed(material, column)
    if (!row) expect(cell).toBe('')
    else if (row.spectrum === 'fallout') expect(Math.abs(Number(cell) - Number(row.hvl_mm))).toBeLessThanOrEqual(0.05)
    else expect(cell).toBe(row.hvl_mm)
  })

  it('halving-tables: every published row is in the table', () => {
    const cells = halvingThickness.cells.flat().filter(cell => cell !== '')
    expect(cells).toHaveLength(thicknesses.length)
  })

  it.each(thicknesses.filter(row => row.tvl_mm !== ''))(
    'halving-tables: $material under $spectrum has a tenth-value thickness of log2(10) halvings, as far as both are rounded',
    row => {
      expect(Math.abs(Number(row.tvl_mm) / Number(row.hvl_mm) / Math.log2(10) - 1)).toBeLessThan(0.03)
    },
  )

  it('halving-tables: the default set is the thicker one for every material that both have', () => {
    for (const [kearny, older] of halvingThickness.cells)
      if (older !== '') expect(Number(kearny)).toBeGreaterThan(Number(older))
  })
})

describe('mass attenuation', () => {
  const published = readRows('mass-attenuation.csv')
  const names: Readonly<Record<string, string>> = {
    'packed earth': 'soil',
    steel: 'iron',
    brick: 'concrete',
    wood: 'concrete',
  }
  const at = (energy: string, material: string) =>
    Number(published.find(row => row.energy_MeV === energy)?.[names[material] ?? material])
  const cell = (energy: string, material: string) =>
    Number(massAttenuation.cells[materials.indexOf(material)]?.[Object.keys(photonEnergies).indexOf(energy)])

  it.each(materials)('halving-tables: %s has the published coefficients at 1, 1.25 and 2 MeV', material => {
    for (const energy of ['1', '1.25', '2']) expect(cell(`${energy} MeV`, material)).toBe(at(energy, material))
  })

  it.each(materials)('halving-tables: %s at 0.662 MeV lies log-log between 0.6 and 0.8 MeV', material => {
    const share = Math.log(0.662 / 0.6) / Math.log(0.8 / 0.6)
    const between = at('0.6', material) * (at('0.8', material) / at('0.6', material)) ** share
    expect(Math.abs(cell('0.662 MeV', material) / between - 1)).toBeLessThan(0.0006)
  })

  it('halving-tables: 1 MeV in concrete of 2300 kg/m^3 has a narrow-beam halving thickness of 4.6 cm, as in handbooks', () => {
    expect(Math.LN2 / (cell('1 MeV', 'concrete') * 2.3)).toBeCloseTo(4.64, 2)
  })
})

describe('build-up of concrete', () => {
  const energies = Object.keys(photonEnergies)
  const rows = readRows('concrete-build-up.csv')
    .map(row => ({ ...row, energy: `${row.energy_MeV} MeV`, x: Number(row.mfp), B: Number(row.B) }))
    .filter(row => energies.includes(row.energy))
  const bergerForm = (energy: string, x: number) => {
    const index = energies.indexOf(energy)
    return 1 + Number(bergerC.cells[index]?.[0]) * x * Math.exp(Number(bergerD.cells[index]?.[0]) * x)
  }

  it('halving-tables: the fit follows the computed factors within 5.5 % from 1 to 10 mean free paths', () => {
    const own = rows.filter(row => 'set' in row && row.set === 'computed')
    expect(own).toHaveLength(20)
    for (const { energy, x, B } of own) expect(Math.abs(bergerForm(energy, x) / B - 1)).toBeLessThan(0.055)
  })

  it('halving-tables: the fit is within 8 % of the older tables to 10 mean free paths, and beyond lies above them by under half a halving', () => {
    const older = rows.filter(row => 'set' in row && row.set === 'moments')
    expect(older).toHaveLength(14)
    for (const { energy, x, B } of older) {
      if (x <= 10) expect(Math.abs(bergerForm(energy, x) / B - 1)).toBeLessThan(0.08)
      else {
        expect(bergerForm(energy, x) / B).toBeGreaterThan(1)
        expect(Math.log2(bergerForm(energy, x) / B)).toBeLessThan(0.5)
      }
    }
  })
})
