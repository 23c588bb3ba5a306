import { describe, expect, it } from 'vitest'
import { fuelStore } from '../../../src/modules/power/fuel-store.ts'
import {
  airToBurn,
  dieselChart,
  fuelDensity,
  heatingValue,
  otherHeatingValue,
} from '../../../src/modules/power/fuel-tables.ts'
import { readRows } from '../../published/read-rows.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const base: Inputs = {
  fuel: 'diesel',
  basis: 'maker',
  maker_use: '2 L/hr',
  rated_power: '8 kW',
  load: '5 kW',
  daily_running: '3 hr',
  days: '14 day',
  reserve: '0.25',
  tank: '120 L',
  tank_share: '0.9',
  turnover: '150 day',
  excess_air: '2',
  place: 'room above ground',
}
const without = (name: string): Inputs => Object.fromEntries(Object.entries(base).filter(([key]) => key !== name))
const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') => runModule(fuelStore, { ...base, ...more }, { units })
const byChart = (more: Inputs = {}) => runModule(fuelStore, { ...without('maker_use'), basis: 'chart', ...more })
const byHeat = (more: Inputs = {}) =>
  runModule(fuelStore, { ...without('maker_use'), basis: 'efficiency', set_efficiency: '0.25', ...more })
const rules = (ran: ReturnType<typeof run>) => ran.errors.map(({ rule }) => rule)
const kept = (says: RegExp, ran: ReturnType<typeof run>) => ran.limits.find(each => says.test(each.says))?.kept
const litre = 0.001
const propane = { fuel: 'propane', tank_share: '0.8' }

describe('fuel-store', () => {
  it.each(['SI', 'US'] as const)('fuel-store: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(fuelStore, fuelStore.example, { units }).diagnostics).toEqual([])
  })

  it('fuel-store: by hand', () => {
    const ran = run()
    expect(ran.si('V_f') / litre).toBeCloseTo(2 * 3 * 14 * 1.25, 9)
    expect(ran.si('V_use') / litre).toBeCloseTo(108, 9)
    expect(ran.si('t_lasts') / 86400).toBeCloseTo(18, 9)
    expect(ran.si('E_g') / 3.6e6).toBeCloseTo(210, 9)
    // 128 450 Btu a gallon: 35.80 MJ/L
    expect(ran.si('eta_all')).toBeCloseTo(5 / ((2 * 35.802) / 3.6), 4)
  })

  it('fuel-store: twice the hours or days take twice the fuel', () => {
    const V = run().si('V_f')
    expect(run({ daily_running: '6 hr' }).si('V_f')).toBeCloseTo(2 * V, 12)
    expect(run({ days: '28 day' }).si('V_f')).toBeCloseTo(2 * V, 12)
  })

  it('fuel-store: the use of the maker gives the efficiency, and the efficiency gives the use again', () => {
    const eta = run().si('eta_all')
    expect(byHeat({ set_efficiency: `${eta}` }).si('q_f')).toBeCloseTo(run().si('q_f'), 12)
  })

  it('fuel-store: the chart is as published, cell by cell, and read between', () => {
    const rows = readRows('diesel-generators.csv')
    if (dieselChart.row.kind !== 'numbers') throw new Error('sizes are numbers')
    expect(dieselChart.row.keys).toEqual(rows.map(row => row.set_kW))
    const columns = ['quarter_load', 'half_load', 'three_quarter_load', 'full_load']
    expect(dieselChart.cells).toEqual(rows.map(row => columns.map(column => row[column])))
    const gallon = 231 * 0.0254 ** 3
    expect((byChart({ load: '5 kW' }).si('q_f') * 3600) / gallon).toBeCloseTo(0.39 + 0.5 * (0.54 - 0.39), 9)
  })

  it('fuel-store: the chart refuses sizes and loads that it does not have', () => {
    expect(rules(byChart({ rated_power: '7.9 kW' }))).toEqual(['lookup-outside-table'])
    expect(rules(byChart({ load: '3 kW' }))).toEqual(['lookup-outside-table'])
    expect(rules(byChart({ rated_power: '75 kW', load: '75 kW' }))).toEqual(['lookup-outside-table'])
    expect(rules(byChart(propane))).toEqual(['limit-exceeded'])
  })

  it('fuel-store: heating values are as looked up, in both units that are printed', () => {
    const BtuPerGallon = 1055.05585262 / (231 * 0.0254 ** 3)
    expect(heatingValue.cells).toEqual([['128450'], ['84250']])
    expect(otherHeatingValue.cells).toEqual([...heatingValue.cells].reverse())
    expect(((128450 * BtuPerGallon) / 1e9).toFixed(2)).toBe('35.80')
    expect(((84250 * BtuPerGallon) / 1e9).toFixed(2)).toBe('23.48')
    // densities: 0.848 and 0.506 kg/L printed beside them
    expect(fuelDensity.cells.map(([cell]) => ((Number(cell) * 0.45359237) / 3.785411784).toFixed(3))).toEqual([
      '0.848',
      '0.506',
    ])
  })

  it('fuel-store: air to burn propane is that of its formula, with 20.95 % of oxygen', () => {
    // C3H8 + 5 O2: volumes of air and, with molar masses of air, carbon and hydrogen, masses
    expect(5 / 0.2095).toBeCloseTo(23.866, 3)
    const mass = ((5 / 0.2095) * 28.964) / (3 * 12.011 + 8 * 1.008)
    expect(mass).toBeCloseTo(15.677, 2)
    expect(airToBurn.cells[1]?.[0]).toBe(mass.toFixed(1))
  })

  it('fuel-store: the engine draws the air of its fuel, as lean as it runs', () => {
    // 2 L/h of 0.848 kg/L by 14.7 and by 2, over 1.2
    expect(run().si('Q_a') * 3600).toBeCloseTo((2 * 0.8483 * 14.7 * 2) / 1.2, 2)
    expect(run({ excess_air: '4' }).si('Q_a')).toBeCloseTo(2 * run().si('Q_a'), 12)
  })

  it('fuel-store: as much propane holds less heat than diesel, and the two are turned into each other', () => {
    const V = run().si('V_other')
    expect(V / run().si('V_f')).toBeCloseTo(128450 / 84250, 9)
    expect(
      run({ ...propane, maker_use: '3 L/hr' }).si('V_other') / run({ ...propane, maker_use: '3 L/hr' }).si('V_f'),
    ).toBeCloseTo(84250 / 128450, 9)
  })

  it('fuel-store: both systems of units give one answer', () => {
    expect(run({}, 'US').si('V_f')).toBe(run().si('V_f'))
  })

  it.each([
    ['stored', { tank: '117 L' }, { tank: '116 L' }],
    ['fresh', { turnover: '180 day' }, { turnover: '181 day' }],
    ['air', { air_supply: '42 m^3/hr' }, { air_supply: '41 m^3/hr' }],
  ])('fuel-store: the check %s holds inside %j and fails outside %j', (check, inside, outside) => {
    expect(run(inside).satisfied(check)).toBe(true)
    expect(run(outside).satisfied(check)).toBe(false)
  })

  it('fuel-store: propane does not go stale', () => {
    expect(() => run({ ...propane, maker_use: '3 L/hr' }).satisfied('fresh')).toThrow(/no check/)
  })

  it('fuel-store: basis and figure go together', () => {
    expect(rules(runModule(fuelStore, without('maker_use')))).toEqual(['limit-exceeded'])
    expect(rules(run({ basis: 'chart' }))).toEqual(['limit-exceeded'])
    expect(rules(byHeat())).toEqual([])
    expect(rules(run({ set_efficiency: '0.2' }))).toEqual(['limit-exceeded'])
    expect(rules(run({ basis: 'efficiency' }))).toContain('limit-exceeded')
  })

  it('fuel-store: refuses more load than the set has, and more current than the heat', () => {
    expect(rules(run({ load: '8 kW' }))).toEqual([])
    expect(rules(run({ load: '8.01 kW' }))).toEqual(['limit-exceeded'])
    expect(rules(run({ maker_use: '1.12 L/hr' }))).toEqual([])
    expect(rules(run({ maker_use: '1.11 L/hr' }))).toEqual(['limit-exceeded'])
  })

  it('fuel-store: refuses propane filled past 0.8, and warns of it below ground', () => {
    const gas = { ...propane, maker_use: '3 L/hr' }
    expect(rules(run(gas))).toEqual([])
    expect(rules(run({ ...gas, tank_share: '0.81' }))).toEqual(['limit-exceeded'])
    expect(kept(/above ground/, run(gas))).toBe(true)
    expect(kept(/above ground/, run({ ...gas, place: 'buried room' }))).toBe(false)
    expect(kept(/above ground/, run({ place: 'buried room' }))).toBeUndefined()
  })

  it('fuel-store: warns of a diesel that idles', () => {
    expect(kept(/0.3 of its power/, run({ load: '2.4 kW' }))).toBe(true)
    expect(kept(/0.3 of its power/, run({ load: '2.39 kW' }))).toBe(false)
    expect(kept(/0.3 of its power/, run({ ...propane, load: '1 kW', maker_use: '3 L/hr' }))).toBeUndefined()
  })

  it.each([
    ['load', '0 kW'],
    ['daily_running', '24.1 hr'],
    ['days', '401 day'],
    ['reserve', '-0.1'],
    ['maker_use', '0 L/hr'],
    ['tank_share', '1.01'],
    ['excess_air', '0.99'],
    ['shelf_life', '0 day'],
    ['set_efficiency', '0.46'],
  ])('fuel-store: refuses %s of %s', (name, value) => {
    expect(rules(run({ [name]: value }))).toContain('value-outside-range')
  })

  it('fuel-store: draws full tanks down to the day they last, and no farther than three times the days wanted', () => {
    const end = (tank: string) => {
      const thick = drawingOf(fuelStore, { ...base, tank }).shapes.find(
        shape => shape.kind === 'line' && shape.weight === 'thick',
      )
      return (thick?.kind === 'line' && thick.points[1]) || [0, 0]
    }
    const lasts = run({ tank: '10 L' }).si('t_lasts') / 86400
    expect(end('10 L')).toEqual([expect.closeTo(lasts, 9), expect.closeTo(0, 9)])
    const [days, left] = end('100000 L')
    expect(days).toBeCloseTo(3 * (run().si('days') / 86400), 9)
    expect(left).toBeGreaterThan(0)
  })
})
