import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pumpedDrain } from '../../../src/modules/living/pumped-drain.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  inflow: '1 L/s',
  pump_flow: '2 L/s',
  pump_head: '10 m',
  working_volume: '0.3 m^3',
  cycle: '10 min',
  spare_volume: '1.8 m^3',
  outage: '30 min',
  static_head: '5 m',
  run: '60 m',
  bore: '50 mm',
  roughness: '0.0015 mm',
  fittings: '5',
  hazen: '150',
  pump_efficiency: '0.5',
  motor_efficiency: '0.8',
}
const run = (more: Row = {}) => runModule(pumpedDrain, { ...base, ...more })
const rules = (more: Row) =>
  run(more)
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)

describe('pumped-drain', () => {
  it.each(['SI', 'US'] as const)('pumped-drain: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(pumpedDrain, pumpedDrain.example, { units }).diagnostics).toEqual([])
  })

  // computed by another program: 60 m of 50 mm, 6 L/s, 0.002 mm by Colebrook at 15 °C 9.82 m; C 150 by Hazen and Williams 9.95 m
  it('pumped-drain: the two formulas give 9.82 and 9.95 m of a plastic main', () => {
    expect(Math.abs(run({ pump_flow: '6 L/s', roughness: '0.002 mm' }).si('h_f') - 9.82)).toBeLessThan(0.005)
    const slow = run({ pump_flow: '5.8 L/s', roughness: '0.002 mm' })
    expect(Math.abs(slow.si('h_w') * (6 / 5.8) ** 1.852 - 9.95)).toBeLessThan(0.005)
    expect(slow.agrees[0]?.difference).toBeLessThan(0.02)
  })

  // memory: the same formula in US units, 4.52 L Q^1.85 / (C^1.85 d^4.87) psi, gpm and inches; feet of water by 2.3067
  it('pumped-drain: Hazen and Williams in SI and in US units agree within half a percent', () => {
    const feet = 100 / 0.3048
    const psi = (4.52 * feet * (10 / 0.0630902) ** 1.85) / (120 ** 1.85 * (100 / 25.4) ** 4.87)
    const ran = run({ pump_flow: '10 L/s', bore: '100 mm', run: '100 m', hazen: '120' })
    expect(Math.abs((psi * 2.3067 * 0.3048) / ran.si('h_w') - 1)).toBeLessThan(0.005)
  })

  it('pumped-drain: power is flow times head, whatever they are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 50 }), fc.integer({ min: 0, max: 100 }), (tenths, lift) => {
        const ran = run({ pump_flow: `${tenths / 10} L/s`, static_head: `${lift} m` })
        expect(ran.si('P_el') * 0.4).toBeCloseTo(999 * 9.80665 * (tenths / 1e4) * ran.si('H'), 6)
      }),
      { numRuns: 20 },
    )
  })

  it('pumped-drain: head lost grows with the length and nearly the square of the flow', () => {
    expect(run({ run: '120 m' }).si('h_f')).toBeCloseTo(2 * run().si('h_f'), 9)
    const power = Math.log(run({ pump_flow: '4 L/s' }).si('h_f') / run().si('h_f')) / Math.log(2)
    expect(power).toBeGreaterThan(1.7)
    expect(power).toBeLessThan(2)
  })

  it.each([
    ['rests', {}, { working_volume: '0.299 m^3' }],
    ['holds', {}, { spare_volume: '1.79 m^3' }],
    ['keeps_up', { inflow: '2 L/s', spare_volume: '9 m^3' }, { inflow: '2.01 L/s' }],
    ['cleans', { pump_flow: '1.473 L/s' }, { pump_flow: '1.472 L/s' }],
  ] as const)('pumped-drain: %s with %j, not with %j', (check, enough, short) => {
    expect(run(enough).satisfied(check)).toBe(true)
    expect(run(short).satisfied(check)).toBe(false)
  })

  it('pumped-drain: the pump just gives the head, or just not', () => {
    const need = run().si('H')
    expect(run({ pump_head: `${need * 1.001} m` }).satisfied('head')).toBe(true)
    expect(run({ pump_head: `${need * 0.999} m` }).satisfied('head')).toBe(false)
  })

  it('pumped-drain: laminar flow has 64 over the Reynolds number, and no second method', () => {
    const ran = run({ pump_flow: '0.05 L/s', inflow: '0.05 L/s' })
    expect(ran.si('f_d')).toBeCloseTo(64 / ran.si('Re'), 12)
    expect(ran.has('h_w')).toBe(false)
    expect(rules({ pump_flow: '0.05 L/s' })).toEqual(['warning limit-exceeded'])
  })

  it.each([
    [{ pump_flow: '5.89 L/s' }, []],
    [{ pump_flow: '5.9 L/s' }, ['warning limit-exceeded']],
    [{ roughness: '2.51 mm' }, ['error limit-exceeded']],
  ])('pumped-drain: %j says %j', (more, said) => {
    expect(rules(more as Row)).toEqual(said)
  })

  it.each([
    ['bore', '14 mm'],
    ['pump_flow', '0 L/s'],
    ['hazen', '161'],
    ['density', '870 kg/m^3'],
    ['pump_efficiency', '1.1'],
  ])('pumped-drain: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it('pumped-drain: the scheme names the lift and the head', () => {
    expect(drawingOf(pumpedDrain, base).says).toContain('5 m up')
  })
})
