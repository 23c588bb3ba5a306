import { describe, expect, it } from 'vitest'
import { integrate } from '../../../src/modules/numerics/integrate.ts'
import { windCharge } from '../../../src/modules/power/wind-charge.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const base: Inputs = {
  diameter: '2 m',
  rated_power: '1 kW',
  efficiency: '0.25',
  speed_is: 'steady',
  speed: '6 m/s',
  measured_height: '10 m',
  hub_height: '10 m',
  air_temperature: '15 degC',
  daily_charge: '60 Ah',
  charge_efficiency: '0.9',
  charge_voltage: '14 V',
  wanted_share: '1',
}
const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') => runModule(windCharge, { ...base, ...more }, { units })
const rules = (more: Inputs) => run(more).errors.map(({ rule }) => rule)
const kept = (says: RegExp, more: Inputs) => run(more).limits.find(each => says.test(each.says))?.kept

describe('wind-charge', () => {
  it.each(['SI', 'US'] as const)('wind-charge: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(windCharge, windCharge.example, { units }).diagnostics).toEqual([])
  })

  it('wind-charge: by hand', () => {
    const ran = run()
    // 1.225/2 x 216 x pi x 0.25, for a day at 14 V
    expect(ran.si('P_e')).toBeCloseTo(0.25 * 0.6125 * 216 * Math.PI, 1)
    expect(ran.si('Q_w') / 3600).toBeCloseTo((ran.si('P_e') * 24) / 14, 9)
    expect(ran.si('r_wind')).toBeCloseTo(ran.si('Q_w') / 3600 / (60 / 0.9), 9)
  })

  // ISO 2533, standard atmosphere at the sea and at 2000 m (memory)
  it.each([
    ['15 degC', '101.325 kPa', '1.225'],
    ['2 degC', '79.495 kPa', '1.006'],
  ])('wind-charge: air of %s and %s weighs %s kg a cubic metre', (air_temperature, air_pressure, printed) => {
    expect(run({ air_temperature, air_pressure }).si('rho_a').toFixed(3)).toBe(printed)
  })

  it('wind-charge: twice the speed is eight times the power, twice the diameter four times', () => {
    const P = run().si('P_w')
    expect(run({ speed: '12 m/s' }).si('P_w') / P).toBeCloseTo(8, 9)
    expect(run({ diameter: '4 m' }).si('P_w') / P).toBeCloseTo(4, 9)
  })

  it('wind-charge: the pattern factor is the mean of the cube of speeds spread as Rayleigh has them', () => {
    const density = (v: number) => (Math.PI / 2) * v * Math.exp((-Math.PI / 4) * v * v)
    const { value } = integrate(v => v ** 3 * density(v), { from: 0, to: 12, relative: 1e-10 })
    expect(run({ speed_is: 'mean' }).si('k_v')).toBeCloseTo(value, 8)
    expect(run({ speed_is: 'mean' }).si('P_w') / run().si('P_w')).toBeCloseTo(value, 8)
  })

  it('wind-charge: the most a rotor takes is that of a slowing by a third', () => {
    const taken = (a: number) => 4 * a * (1 - a) ** 2
    expect(run().si('P_b') / run().si('P_w')).toBeCloseTo(taken(1 / 3), 12)
    for (const a of [0, 0.2, 0.3, 0.4, 1]) expect(taken(a)).toBeLessThan(16 / 27)
  })

  it('wind-charge: the wind rises by a power of the height', () => {
    expect(run({ hub_height: '20 m' }).si('v_h')).toBeCloseTo(6 * 2 ** 0.143, 9)
    expect(run({ hub_height: '20 m', shear: '0' }).si('v_h')).toBeCloseTo(6, 9)
  })

  it('wind-charge: no more than the greatest power of the set', () => {
    expect(run({ speed: '20 m/s' }).si('P_c')).toBe(1000)
  })

  it('wind-charge: a density that is given stands in place of that of the air', () => {
    expect(run({ density: '1.0 kg/m^3' }).si('rho_a')).toBe(1)
  })

  it('wind-charge: both systems of units give one answer', () => {
    expect(run({}, 'US').si('Q_w')).toBe(run().si('Q_w'))
  })

  it('wind-charge: a share just reached is reached, just missed is not', () => {
    const r = run().si('r_wind')
    expect(run({ wanted_share: `${r * 0.999}` }).satisfied('enough')).toBe(true)
    expect(run({ wanted_share: `${r * 1.001}` }).satisfied('enough')).toBe(false)
  })

  it.each([
    [/0.4 of the greatest/, { speed_is: 'mean', speed: '7.5 m/s' }, { speed_is: 'mean', speed: '7.6 m/s' }],
    [/five times/, { hub_height: '50 m' }, { hub_height: '50.1 m' }],
    [/five times/, { hub_height: '3 m', measured_height: '15 m' }, { hub_height: '3 m', measured_height: '15.1 m' }],
    [/3 metres in a second/, { speed: '3 m/s' }, { speed: '2.99 m/s' }],
  ])('wind-charge: warns past the limit of %s', (says, inside, outside) => {
    expect(kept(says, inside)).toBe(true)
    expect(kept(says, outside)).toBe(false)
    expect(rules(outside)).toEqual([])
  })

  it('wind-charge: the limit on the mean power is no limit of a steady wind', () => {
    expect(kept(/0.4 of the greatest/, { speed: '20 m/s' })).toBeUndefined()
  })

  it('wind-charge: refuses blades that sweep the ground', () => {
    expect(rules({ diameter: '10 m', hub_height: '7 m' })).toEqual([])
    expect(rules({ diameter: '10 m', hub_height: '6.99 m' })).toEqual(['limit-exceeded'])
  })

  it.each([
    ['efficiency', '0.593'],
    ['efficiency', '0'],
    ['speed', '0 m/s'],
    ['speed', '31 m/s'],
    ['shear', '0.51'],
    ['hub_height', '0.9 m'],
    ['air_pressure', '39 kPa'],
    ['density', '1.9 kg/m^3'],
    ['wanted_share', '-0.1'],
    ['diameter', '0 m'],
  ])('wind-charge: refuses %s of %s', (name, value) => {
    expect(rules({ [name]: value })).toContain('value-outside-range')
  })

  it('wind-charge: draws the power up to the greatest of the set, and the spread of speeds only about a mean', () => {
    const drawn = (speed_is: string) =>
      drawingOf(windCharge, { ...base, speed_is, rated_power: '1 kW', speed: '8 m/s' })
    const lines = (speed_is: string) => drawn(speed_is).shapes.flatMap(shape => (shape.kind === 'line' ? [shape] : []))
    const power = lines('mean').find(({ weight }) => weight === 'thick')?.points ?? []
    expect(Math.max(...power.map(([, P]) => P))).toBe(1000)
    // Rayleigh: the speed that blows most is the mean by the root of two over pi
    const spread = lines('mean').find(({ dashed }) => dashed)?.points ?? []
    const peak = spread.toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? 0
    const step = spread[1]?.[0] ?? 0
    expect(Math.abs(peak - run({ speed: '8 m/s' }).si('v_h') * Math.sqrt(2 / Math.PI))).toBeLessThan(step)
    expect(lines('steady').some(({ dashed }) => dashed)).toBe(false)
    expect(drawn('steady').says).not.toContain('dashed')
  })

  it.each([
    ['SI', 'm/s', 5],
    ['US', 'mph', 2.2352],
  ] as const)('wind-charge: the marks of the chart stand at round speeds of the %s units', (units, text, first) => {
    const { shapes } = drawingOf(windCharge, { ...base, speed_is: 'mean', rated_power: '1 kW' }, { units })
    const mark = shapes.find(shape => shape.kind === 'label' && shape.label.text === `5 ${text}`)
    expect(mark?.kind === 'label' && mark.at[0]).toBeCloseTo(first, 9)
  })
})
