import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { batteryBank } from '../../../src/modules/power/battery-bank.ts'
import { coldFactor } from '../../../src/modules/power/battery-cold-factor.ts'
import { readRows } from '../../published/read-rows.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const base: Inputs = {
  method: 'worksheet',
  chemistry: 'lead-acid',
  daily_charge: '50 Ah',
  running_current: '5 A',
  autonomy: '3 day',
  voltage: '12 V',
  discharge_most: '0.5',
  margin: '1',
  cell_temperature: '80 degF',
  unit_capacity: '100 Ah',
  unit_voltage: '12 V',
  strings: '3',
  rated_time: '20 hr',
  charge_efficiency: '0.9',
}
const run = (more: Inputs = {}) => runModule(batteryBank, { ...base, ...more })
const rules = (more: Inputs) => run(more).errors.map(({ rule }) => rule)
const Ah = 3600
const kept = (says: RegExp, more: Inputs) => run(more).limits.find(each => says.test(each.says))?.kept

describe('battery bank', () => {
  it.each(['SI', 'US'] as const)('battery-bank: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(batteryBank, batteryBank.example, { units }).diagnostics).toEqual([])
  })

  it('battery-bank: days of charge over the depth of discharge', () => {
    expect(run().errors).toEqual([])
    expect(run().si('C_req') / Ah).toBeCloseTo(300, 9)
    expect(run().si('Q_in') / Ah).toBeCloseTo(50 / 0.9, 9)
  })

  // IEEE 1013, order of the three demands (memory)
  it.each([
    ['the greatest depth governs', { discharge_most: '0.5', daily_most: '0.2' }, 300],
    ['the daily depth governs', { discharge_most: '0.8', daily_most: '0.15' }, 50 / 0.15],
    ['the end of life governs', { discharge_most: '0.9', daily_most: '0.5', end_of_life: '0.8' }, 150 / 0.8],
  ])('battery-bank: by IEEE 1013 %s', (_, more, expected) => {
    expect(run({ method: 'IEEE 1013', ...more }).si('C_u') / Ah).toBeCloseTo(expected, 9)
  })

  it('battery-bank: ageing 1.25 is one over 0.80, and counts in one place only', () => {
    expect(run({ method: 'IEEE 485' }).si('C_req') / Ah).toBeCloseTo(150 / 0.8, 9)
    expect(run({ method: 'IEEE 1013' }).si('k_age')).toBe(1)
  })

  it('battery-bank: twice the voltage halves the ampere-hours and leaves the energy', () => {
    const [low, high] = [run(), run({ voltage: '24 V', daily_charge: '25 Ah' })]
    expect(high.si('C_req') * 2).toBeCloseTo(low.si('C_req'), 6)
    expect(high.si('E_req')).toBeCloseTo(low.si('E_req'), 3)
    expect(high.si('n_all')).toBe(6)
  })

  it('battery-bank: a battery more is needed only when the last one is full', () => {
    expect(run().si('n_req')).toBe(3)
    expect(run({ daily_charge: '50.01 Ah' }).si('n_req')).toBe(4)
    expect(run().satisfied('capacity')).toBe(true)
    expect(run({ daily_charge: '50.01 Ah' }).satisfied('capacity')).toBe(false)
  })

  it('battery-bank: no credit for warmth, and no answer below the table', () => {
    expect(run({ cell_temperature: '40 degC' }).si('k_T')).toBe(1)
    expect(run({ cell_temperature: '20 degF' }).si('k_T')).toBeCloseTo(1.59, 9)
    expect(rules({ cell_temperature: '19 degF' })).toEqual(['lookup-outside-table'])
    expect(run({ cell_temperature: '19 degF', cold_factor: '1.7' }).si('k_T')).toBe(1.7)
  })

  it('battery-bank: the table of factors is as published, cell by cell', () => {
    const rows = readRows('battery-temperature.csv').filter(row => row.A_worksheet !== '')
    // 77 degF stands in the file for the other standard alone
    expect(coldFactor.row.keys).toEqual(rows.map(row => row.temp_F))
    expect(coldFactor.cells.map(([cell]) => cell)).toEqual(rows.map(row => row.A_worksheet))
  })

  it('battery-bank: 50 degF has 1.19 and 60 degF 1.11, not a row further', () => {
    expect(run({ cell_temperature: '50 degF' }).si('k_T')).toBeCloseTo(1.19, 9)
    expect(run({ cell_temperature: '10 degC' }).si('k_T')).toBeCloseTo(1.19, 9)
    expect(run({ cell_temperature: '60 degF' }).si('k_T')).toBeCloseTo(1.11, 9)
  })

  it('battery-bank: lithium without a factor of its maker is refused', () => {
    const lithium = { chemistry: 'lithium iron phosphate', discharge_most: '0.8' }
    expect(rules(lithium)).toContain('limit-exceeded')
    expect(rules({ ...lithium, cold_factor: '1' })).toEqual([])
  })

  it('battery-bank: batteries that do not make up the voltage are refused', () => {
    expect(rules({ unit_voltage: '6 V' })).toEqual([])
    expect(rules({ unit_voltage: '5 V' })).toContain('limit-exceeded')
    expect(rules({ unit_voltage: '24 V' })).toContain('limit-exceeded')
  })

  it.each([
    ['lead-acid is discharged', { discharge_most: '0.8' }, { discharge_most: '0.81' }],
    ['the running current', { running_current: '15 A' }, { running_current: '15.1 A' }],
    ['four strings', { strings: '4' }, { strings: '5' }],
  ])('battery-bank: says where %s goes past its limit', (says, inside, outside) => {
    expect(kept(new RegExp(says), inside)).toBe(true)
    expect(kept(new RegExp(says), outside)).toBe(false)
    expect(rules(outside)).toEqual([])
  })

  it('battery-bank: says where lithium cells freeze', () => {
    const lithium = { chemistry: 'lithium iron phosphate', cold_factor: '1.1' }
    expect(kept(/above freezing/, { ...lithium, cell_temperature: '0 degC' })).toBe(true)
    expect(kept(/above freezing/, { ...lithium, cell_temperature: '-1 degC' })).toBe(false)
  })

  it.each([
    ['daily_charge', '0 Ah'],
    ['autonomy', '0 day'],
    ['autonomy', '61 day'],
    ['discharge_most', '0.91'],
    ['margin', '0.99'],
    ['charge_efficiency', '1.01'],
    ['cell_temperature', '-21 degC'],
    ['strings', '0.5'],
    ['cold_factor', '0.9'],
  ])('battery-bank: refuses %s of %s', (name, value) => {
    expect(rules({ [name]: value })).toContain('value-outside-range')
  })
})

describe('battery bank, hour by hour', () => {
  it('battery-bank: a bank of just the needed capacity ends at the allowed depth, whatever the load', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 200 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 30, max: 80 }),
        fc.integer({ min: 20, max: 90 }),
        (daily, halves, depth, theta) => {
          const ran = run({
            daily_charge: `${daily} Ah`,
            autonomy: `${halves / 2} day`,
            discharge_most: `${depth / 100}`,
            cell_temperature: `${theta} degF`,
            margin: '1.1',
          })
          expect(ran.si('D_size')).toBeCloseTo(depth / 100, 9)
          expect(ran.agrees.every(({ difference, band }) => difference <= band)).toBe(true)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('battery-bank: a stepped day of lamps, pumps and night agrees with the even draw at the end of each day', () => {
    // by hand: 24 hourly draws that add up to 50 Ah, from a bank of 300 Ah, for three days
    const hourly = Array.from({ length: 24 }, (_, hour) => (hour >= 16 && hour < 22 ? 6 : 14 / 18))
    let charge = 300
    for (let day = 0; day < 3; day += 1) for (const draw of hourly) charge -= draw
    expect(run().si('D_step')).toBeCloseTo(1 - charge / 300, 9)
  })

  it('battery-bank: too small a bank fails the stepped check as it fails the first', () => {
    expect(run({ strings: '2' }).satisfied('depth')).toBe(false)
    expect(run({ strings: '2' }).si('t_step') / 86400).toBeCloseTo(2, 9)
    expect(run().satisfied('depth')).toBe(true)
  })

  it('battery-bank: draws the state of charge to the days wanted and the days held', () => {
    const drawing = drawingOf(batteryBank, { ...base, strings: '4' })
    expect(drawing.says).toContain('after 3 day the depth of discharge is 0.3750')
    expect(drawing.says).toContain('is reached after 4.000 day')
  })
})
