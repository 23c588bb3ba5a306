import { describe, expect, it } from 'vitest'
import { pvArray } from '../../../src/modules/power/pv-array.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const base: Inputs = {
  daily_charge: '60 Ah',
  charge_efficiency: '0.9',
  charge_voltage: '14 V',
  irradiation: '3 kWh/(m^2*day)',
  regulator: 'tracking',
  regulator_efficiency: '0.95',
  derate: '0.8',
  reserve_ratio: '1.2',
  panel_power: '180 W',
  panel_voltage: '18 V',
  panel_current: '10 A',
  open_voltage: '22 V',
  short_current: '10.8 A',
  power_coefficient: '-0.4 percent/K',
  voltage_coefficient: '-0.3 percent/K',
  cell_rating: '45 degC',
  series: '2',
  side_by_side: '2',
  air_temperature: '20 degC',
  coldest_morning: '-15 degC',
  regulator_voltage: '100 V',
  regulator_current: '30 A',
}
const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') => runModule(pvArray, { ...base, ...more }, { units })
const rules = (more: Inputs) => run(more).errors.map(({ rule }) => rule)
const kept = (says: RegExp, more: Inputs) => run(more).limits.find(each => says.test(each.says))?.kept
const Ah = 3600

describe('pv-array', () => {
  it.each(['SI', 'US'] as const)('pv-array: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(pvArray, pvArray.example, { units }).diagnostics).toEqual([])
  })

  it('pv-array: by hand, with a tracking regulator', () => {
    const ran = run()
    // cells at 45 degC: 1 - 0.004 x 20; 60/0.9 x 1.2 Ah at 14 V over 3 h, 0.92, 0.8 and 0.95
    expect(ran.si('k_theta')).toBeCloseTo(0.92, 12)
    expect(ran.si('P_req')).toBeCloseTo(((60 / 0.9) * 1.2 * 14) / (3 * 0.92 * 0.8 * 0.95), 6)
    expect(ran.si('n_req')).toBe(3)
    expect(ran.si('Q_array') / Ah).toBeCloseTo((4 * 180 * 3 * 0.92 * 0.8 * 0.95) / 14, 6)
  })

  it('pv-array: by hand, joined directly: the current counts and heat does not', () => {
    const ran = run({ regulator: 'direct', series: '1', side_by_side: '3' })
    expect(ran.si('Q_array') / Ah).toBeCloseTo(3 * 10 * 3 * 0.8, 9)
    expect(ran.si('I_req')).toBeCloseTo(80 / 2.4, 9)
    expect(ran.si('n_req')).toBe(4)
    expect(run({ regulator: 'direct', air_temperature: '40 degC' }).si('Q_array')).toBe(
      run({ regulator: 'direct' }).si('Q_array'),
    )
  })

  it('pv-array: as many panels as are needed are enough, one fewer is not', () => {
    for (const regulator of ['tracking', 'direct']) {
      const n = run({ regulator, series: '1' }).si('n_req')
      expect(run({ regulator, series: '1', side_by_side: `${n}` }).satisfied('enough')).toBe(true)
      expect(run({ regulator, series: '1', side_by_side: `${n - 1}` }).satisfied('enough')).toBe(false)
    }
  })

  it('pv-array: twice the sun or half the load needs half the array, and a cold day gives more', () => {
    const P = run().si('P_req')
    expect(run({ irradiation: '6 kWh/(m^2*day)' }).si('P_req')).toBeCloseTo(P / 2, 9)
    expect(run({ daily_charge: '30 Ah' }).si('P_req')).toBeCloseTo(P / 2, 9)
    expect(run({ air_temperature: '-10 degC' }).si('P_req')).toBeLessThan(P)
    expect(run({ charge_voltage: '15 V' }).si('P_req')).toBeGreaterThan(P)
  })

  it('pv-array: both systems of units give one answer', () => {
    expect(run({}, 'US').si('P_req')).toBe(run().si('P_req'))
    expect(run({ air_temperature: '68 degF' }).si('P_req')).toBeCloseTo(run().si('P_req'), 6)
  })

  // 2 x 22 x (1 + 0.003 x 40) V, and 1.25 x 2 x 10.8 A, by hand
  it.each([
    ['cold_morning', { regulator_voltage: '49.3 V' }, { regulator_voltage: '49.2 V' }],
    ['regulator_carries', { regulator_current: '27 A' }, { regulator_current: '26.9 A' }],
    ['charges', { series: '1', charge_voltage: '16.5 V' }, { series: '1', charge_voltage: '16.6 V' }],
  ])('pv-array: the check %s holds just inside %j and fails just outside %j', (check, inside, outside) => {
    expect(run(inside).satisfied(check)).toBe(true)
    expect(run(outside).satisfied(check)).toBe(false)
  })

  it('pv-array: cables carry 1.25 times what the regulator must', () => {
    expect(run().si('I_cable')).toBeCloseTo(1.25 * 1.25 * 2 * 10.8, 9)
  })

  it.each([
    [{ panel_power: '188 W' }, { panel_power: '190 W' }],
    [{ open_voltage: '18.1 V' }, { open_voltage: '18 V' }],
    [{ short_current: '10.1 A' }, { short_current: '10 A' }],
  ])('pv-array: figures of one panel, %j, are taken and of two, %j, refused', (one, two) => {
    expect(rules(one)).toEqual([])
    expect(rules(two)).toEqual(['limit-exceeded'])
  })

  it('pv-array: refuses cells so hot that nothing is left', () => {
    const hot = { power_coefficient: '-1 percent/K', cell_rating: '70 degC', irradiance: '1200 W/m^2' }
    expect(rules({ ...hot, air_temperature: '49 degC' })).toEqual([])
    expect(rules({ ...hot, air_temperature: '50 degC' })).toEqual(['limit-exceeded'])
  })

  it.each([
    [/losses/, { derate: '0.94' }, { derate: '0.95' }],
    [/darkest/, { irradiation: '0.5 kWh/(m^2*day)' }, { irradiation: '0.49 kWh/(m^2*day)' }],
  ])('pv-array: warns past the limit of %s', (says, inside, outside) => {
    expect(kept(says, inside)).toBe(true)
    expect(kept(says, outside)).toBe(false)
    expect(rules(outside)).toEqual([])
  })

  it.each([
    ['irradiation', '0.09 kWh/(m^2*day)'],
    ['irradiation', '12.1 kWh/(m^2*day)'],
    ['derate', '0.29'],
    ['derate', '1.01'],
    ['charge_efficiency', '0.49'],
    ['regulator_efficiency', '0.79'],
    ['power_coefficient', '0.1 percent/K'],
    ['cell_rating', '71 degC'],
    ['series', '0.9'],
    ['side_by_side', '101'],
    ['reserve_ratio', '0.09'],
    ['coldest_morning', '-61 degC'],
  ])('pv-array: refuses %s of %s', (name, value) => {
    expect(rules({ [name]: value })).toContain('value-outside-range')
  })

  it('pv-array: draws what goes out and must go back beside what the array gives, one scale for all', () => {
    for (const regulator of ['tracking', 'direct']) {
      const ran = run({ regulator })
      const drawing = drawingOf(pvArray, { ...base, regulator })
      const bars = drawing.shapes.flatMap(shape => (shape.kind === 'polygon' ? [shape.points[1]?.[0] ?? 0] : []))
      const charges = ['daily_charge', 'Q_in', 'Q_req', 'Q_array'].map(name => ran.si(name))
      expect(bars.map(bar => bar / (bars[0] ?? 0))).toEqual(charges.map(Q => expect.closeTo(Q / (charges[0] ?? 0), 9)))
      expect(drawing.says).toContain('60 Ah drawn')
    }
  })
})
