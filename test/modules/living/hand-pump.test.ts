import { describe, expect, it } from 'vitest'
import { handPump } from '../../../src/modules/living/hand-pump.ts'
import { readRows } from '../../published/read-rows.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  cylinder: 'above the water',
  altitude: '0 m',
  water_temperature: '10 degC',
  suction: '5 m',
  suction_loss: '0.5 m',
  head: '8 m',
  bore: '75 mm',
  stroke: '120 mm',
  rate: '40',
  slip: '0.9',
  lever: '5',
  efficiency: '0.8',
  rod_weight: '0 N',
  force_limit: '200 N',
  pumpers: '1 person',
  daily_water: '200 L',
  daily_time: '1 hr',
}
const run = (more: Row = {}) => runModule(handPump, { ...base, ...more })
const rules = (more: Row) =>
  run(more)
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)

describe('hand-pump', () => {
  it.each(['SI', 'US'] as const)('hand-pump: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(handPump, handPump.example, { units }).diagnostics).toEqual([])
  })

  it.each(readRows('standard-atmosphere.csv'))('hand-pump: $altitude_m m has $pressure_Pa Pa', row => {
    const pascals = run({ altitude: `${row.altitude_m} m` }).si('p_a')
    expect(Math.abs(pascals / Number(row.pressure_Pa) - 1)).toBeLessThan(1e-5)
  })

  it.each(readRows('saturation-pressure.csv'))(
    'hand-pump: water at $temp_C °C has $p_sat_Pa Pa within a percent',
    row => {
      const pascals = run({ water_temperature: `${row.temp_C} degC` }).si('p_w')
      expect(Math.abs(pascals / Number(row.p_sat_Pa) - 1)).toBeLessThan(0.01)
    },
  )

  it('hand-pump: the lift falls with the height of the place and the warmth of the water', () => {
    expect(run({ altitude: '1500 m' }).si('h_t')).toBeLessThan(run().si('h_t'))
    expect(run({ water_temperature: '40 degC' }).si('h_t')).toBeLessThan(run().si('h_t'))
  })

  it('hand-pump: the pump just sucks, or just does not; a cylinder in the water need not', () => {
    const most = run().si('h_p')
    expect(most).toBeGreaterThan(6)
    expect(most).toBeLessThan(7)
    expect(run({ suction: `${most * 0.999} m` }).satisfied('sucks')).toBe(true)
    expect(run({ suction: `${most * 1.001} m` }).satisfied('sucks')).toBe(false)
    expect(() => run({ cylinder: 'in the water', suction: '0 m' }).satisfied('sucks')).toThrow()
  })

  it('hand-pump: the work of the handle is that of the rod, and power is flow times head', () => {
    const ran = run({ efficiency: '1', slip: '1' })
    expect(ran.si('F_h') * 5).toBeCloseTo(ran.si('F_r'), 9)
    expect(ran.si('P_h')).toBeCloseTo((ran.si('F_r') * 0.12 * 40) / 60, 9)
  })

  it('hand-pump: twice the head, twice the force; twice the strokes, twice the water', () => {
    expect(run({ head: '16 m' }).si('F_r')).toBeCloseTo(2 * run().si('F_r'), 9)
    expect(run({ rate: '80' }).si('Q_h')).toBeCloseTo(2 * run().si('Q_h'), 12)
    expect(run({ pumpers: '2 person' }).si('P_h')).toBeCloseTo(run().si('P_h') / 2, 12)
  })

  it.each([
    ['force', 'F_h', 'force_limit', 'N'],
    ['power', 'P_h', 'person_power', 'W/person'],
    ['enough', 't_p', 'daily_time', 's'],
  ] as const)('hand-pump: %s is just enough, or just not', (check, name, input, unit) => {
    const needed = run().si(name)
    expect(run({ [input]: `${needed * 1.001} ${unit}` }).satisfied(check)).toBe(true)
    expect(run({ [input]: `${needed * 0.999} ${unit}` }).satisfied(check)).toBe(false)
  })

  it.each([
    [{ suction: '7.5 m' }, []],
    [{ suction: '7.6 m' }, ['warning limit-exceeded']],
    [{ suction: '8.1 m' }, ['error limit-exceeded']],
  ])('hand-pump: %j says %j', (more, said) => {
    expect(rules(more as Row).sort()).toEqual(said)
  })

  it.each([
    ['altitude', '5001 m'],
    ['water_temperature', '0 degC'],
    ['bore', '19 mm'],
    ['lever', '0.9'],
    ['margin', '0.9 m'],
  ])('hand-pump: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })
})
