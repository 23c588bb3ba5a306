import { describe, expect, it } from 'vitest'
import { awgResistance, awgSizes, iecResistance } from '../../../src/modules/power/conductor-tables.ts'
import { readRows } from '../../published/read-rows.ts'

const iec = readRows('iec-60228.csv')
const gauges = readRows('wire-gauge.csv').filter(row => row.NEC_75C_stranded_ohm_per_kft !== '')
const columns = [
  'class_1_2_plain_copper',
  'class_1_2_metal_coated_copper',
  'class_5_6_plain_copper',
  'class_5_6_metal_coated_copper',
  'class_1_2_aluminium',
]

/** Diameter that the gauge defines, mm (ASTM B258). */
const diameter = (n: number): number => 0.127 * 92 ** ((36 - n) / 39)
const number = (name: string): number => (name.includes('/') ? 1 - Number(name.split('/')[0]) : Number(name))
const area = (name: string): number => (Math.PI / 4) * diameter(number(name)) ** 2
/** Annealed copper at 20 degC, ohm per 1000 ft, and the same at 75 degC. */
const cold = (name: string): number => (1000 / 58 / area(name)) * 0.3048
const warm = (name: string): number => (cold(name) * (234.5 + 75)) / (234.5 + 20)

describe('conductor tables', () => {
  it('conductor-tables: areas and resistances are those of IEC 60228, cell by cell', () => {
    if (iecResistance.row.kind !== 'numbers') throw new Error('areas are numbers')
    expect(iecResistance.row.keys).toEqual(iec.map(row => row.area_mm2))
    expect(iecResistance.cells).toEqual(iec.map(row => columns.map(column => row[column])))
  })

  it('conductor-tables: gauges and resistances are those of the code, cell by cell', () => {
    expect(Object.keys(awgSizes)).toEqual(gauges.map(row => `AWG ${row.awg}`))
    expect(awgResistance.row.keys).toEqual(Object.keys(awgSizes))
    expect(awgResistance.cells).toEqual(
      gauges.map(row => [row.NEC_75C_solid_ohm_per_kft, row.NEC_75C_stranded_ohm_per_kft]),
    )
  })

  it('conductor-tables: the maximum of IEC 60228 is above plain copper over the area, by 4 to 13 %', () => {
    // 1/58 ohm mm²/m annealed copper, memory; the published text puts R x A of plain copper at 18.0 to 19.4
    for (const row of iec) {
      const product = Number(row.class_1_2_plain_copper) * Number(row.area_mm2)
      expect(product).toBeGreaterThan(1000 / 58)
      expect(product).toBeGreaterThanOrEqual(17.95)
      expect(product).toBeLessThanOrEqual(19.4)
    }
  })

  it('conductor-tables: finer wires and tin never lower a resistance, save 50 mm² as printed', () => {
    for (const row of iec) {
      const [plain = 0, tinned = 0, fine = 0, fineTinned = 0] = columns.map(column => Number(row[column]))
      expect(tinned).toBeGreaterThan(plain)
      expect(fineTinned).toBeGreaterThan(fine)
      if (row.area_mm2 !== '50') expect(fine).toBeGreaterThan(plain)
    }
  })

  it('conductor-tables: solid gauges of the code are copper of the defined diameter at 75 degC', () => {
    for (const { awg = '', NEC_75C_solid_ohm_per_kft: printed } of gauges)
      if (printed) expect(Math.abs(Number(printed) / warm(awg) - 1), awg).toBeLessThan(0.005)
  })

  it('conductor-tables: stranded gauges have 1 to 3 % more', () => {
    for (const { awg = '', NEC_75C_stranded_ohm_per_kft: printed } of gauges) {
      expect(Number(printed) / warm(awg), awg).toBeGreaterThan(1.01)
      expect(Number(printed) / warm(awg), awg).toBeLessThan(1.03)
    }
  })

  // E4: wire table, solid, ohm per 1000 ft at 20 degC, looked up; the last digit of the table
  it.each([
    ['14', 2.525, 0.0025],
    ['10', 0.9989, 0.001],
    ['4', 0.2485, 0.00025],
    ['4/0', 0.049, 0.0005],
  ])(
    'conductor-tables: gauge %s has %s ohm for 1000 ft at 20 degC, to the 0.1 % of the copper',
    (awg, printed, within) => {
      expect(Math.abs(cold(awg) - printed)).toBeLessThan(within)
    },
  )

  it('conductor-tables: areas beside the gauges are those the gauge defines', () => {
    for (const [name, says] of Object.entries(awgSizes)) {
      const printed = says.replace(' mm²', '')
      expect(Number(printed)).toBeCloseTo(Number(area(name.replace('AWG ', '')).toPrecision(3)), 9)
    }
  })

  it('conductor-tables: three gauge numbers double the area (identity, 2.0050)', () => {
    expect(area('9') / area('12')).toBeCloseTo(2.005, 4)
  })
})
