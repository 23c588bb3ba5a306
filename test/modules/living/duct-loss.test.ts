import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { colebrook } from '../../../src/modules/living/colebrook.ts'
import { ductLoss } from '../../../src/modules/living/duct-loss.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>

const duct: Row = {
  side: 'intake',
  bore: '150 mm',
  run: '20 m',
  roughness: '0.15 mm',
  entrance: 'none',
  bend: 'smooth',
  bends: '0',
  outlet: 'none',
  other: '0',
}
const base: Row = {
  flow: '40 L/s',
  filter_loss: '0 Pa',
  filter_flow: '40 L/s',
  valve: '0 Pa',
  overpressure: '0 Pa',
  blower_efficiency: '0.5',
  motor_efficiency: '0.7',
  voltage: '12 V',
  crank_efficiency: '0.8',
  crankers: '1 person',
}
const run = (more: Row = {}, ducts: readonly Row[] = [{}]) =>
  runModule(ductLoss, { ducts: ducts.map(each => ({ ...duct, ...each })), ...base, ...more })
const rules = (ran: ReturnType<typeof run>) =>
  ran.diagnostics
    .filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const friction = (Re: number, rough: number) => {
  const answer = colebrook.run({ Re, roughness: rough, bore: 1 }, {})
  return answer.ok ? (answer.values.f ?? Number.NaN) : Number.NaN
}
const haaland = (Re: number, rough: number) => (-1.8 * Math.log10((rough / 3.7) ** 1.11 + 6.9 / Re)) ** -2

describe('duct-loss', () => {
  it.each(['SI', 'US'] as const)('duct-loss: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(ductLoss, ductLoss.example, { units }).diagnostics).toEqual([])
  })

  // looked up: Crane TP-410M, Example 7-1, friction factor 0.0179 at a Reynolds number of 100 600 in plastic pipe
  it('duct-loss: a smooth pipe of 52.5 mm has the friction factor that Crane prints', () => {
    expect(Math.abs(friction(100600, 0) / 0.0179 - 1)).toBeLessThan(0.01)
  })

  // memory: F. M. White, Fluid Mechanics, 0.0225 read off the chart, relative roughness 0.0013
  it('duct-loss: the friction factor stands within reading of the Moody chart', () => {
    expect(Math.abs(friction(128_000, 0.0013) / 0.0225 - 1)).toBeLessThan(0.015)
  })

  it('duct-loss: the explicit formula stands within 2 % of Colebrook over the whole turbulent range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(4000), max: Math.log(1e8), noNaN: true }),
        fc.double({ min: Math.log(1e-6), max: Math.log(0.05), noNaN: true }),
        (logRe, logRough) => {
          const [Re, rough] = [Math.exp(logRe), Math.exp(logRough)]
          expect(Math.abs(haaland(Re, rough) / friction(Re, rough) - 1)).toBeLessThan(0.02)
        },
      ),
      { numRuns: 500 },
    )
  })

  it('duct-loss: in the fully rough limit friction depends on roughness alone', () => {
    expect(friction(1e12, 0.01)).toBeCloseTo((-2 * Math.log10(0.01 / 3.7)) ** -2, 8)
  })

  it('duct-loss: friction falls with the Reynolds number and grows with roughness', () => {
    expect(friction(1e5, 0.001)).toBeLessThan(friction(1e4, 0.001))
    expect(friction(1e5, 0.002)).toBeGreaterThan(friction(1e5, 0.001))
  })

  it('duct-loss: Colebrook has no answer in laminar flow or for a wall too rough', () => {
    expect([friction(2299, 0), friction(1e5, 0.0501), friction(1e5, -0.001)]).toEqual([
      Number.NaN,
      Number.NaN,
      Number.NaN,
    ])
    expect(friction(2300, 0.05)).toBeGreaterThan(0)
  })

  it('duct-loss: the formula printed over the root gives the root', () => {
    const ran = run()
    expect(ran.si('f_d_1') / ran.si('f_0_1')).toBeCloseTo(1, 12)
    expect(ran.errors).toEqual([])
  })

  it('duct-loss: the loss grows with the length, and ducts one after the other add', () => {
    expect(run({}, [{ run: '40 m' }]).si('dp_ducts')).toBeCloseTo(2 * run().si('dp_ducts'), 9)
    expect(run({}, [{}, {}]).si('dp_ducts')).toBeCloseTo(2 * run().si('dp_ducts'), 9)
  })

  it('duct-loss: two ducts side by side lose about a quarter', () => {
    const quarter = run({ flow: '20 L/s' }).si('dp_ducts') / run().si('dp_ducts')
    expect(quarter).toBeGreaterThan(0.25)
    expect(quarter).toBeLessThan(0.3)
  })

  it('duct-loss: laminar flow follows Hagen and Poiseuille by both methods', () => {
    const ran = run({ flow: '2 L/s' })
    expect(ran.si('Re_1')).toBeLessThan(2300)
    expect(ran.si('f_d_1')).toBeCloseTo(64 / ran.si('Re_1'), 12)
    expect(ran.agrees[0]?.difference).toBeLessThan(1e-9)
    expect(rules(ran)).toEqual(['warning limit-exceeded'])
  })

  it('duct-loss: the methods agree for a turbulent duct', () => {
    const [agrees] = run().agrees
    expect(agrees?.difference).toBeGreaterThan(1e-6)
    expect(agrees?.difference).toBeLessThan(0.02)
  })

  it.each([
    [{ entrance: 'sharp-edged' }, 0.5],
    [{ entrance: 'rounded' }, 0.03],
    [{ entrance: 'projecting' }, 1],
    [{ entrance: 'hood' }, 1.3],
    [{ outlet: 'open' }, 1],
    [{ bends: '2' }, 0.6],
    [{ bends: '2', bend: 'segmented' }, 0.42],
    [{ bends: '2', bend: 'threaded' }, 1.8],
    [{ bends: '2', bend: 'mitre' }, 2.2],
    [{ bends: '2', bend: 'mitre with vanes' }, 0.4],
    [{ bends: '2', bend: 'threaded 45' }, 0.8],
    [{ other: '1.8', outlet: 'open' }, 2.8],
  ])('duct-loss: fittings %j lose %d velocity pressures', (more, zeta) => {
    const ran = run({}, [{ ...more, run: '0 m' } as Row])
    expect(ran.si('zeta_1')).toBeCloseTo(zeta, 12)
    expect(ran.si('dp_ducts')).toBeCloseTo(zeta * ran.si('p_v_1'), 12)
  })

  it('duct-loss: only what lies behind the room lifts its pressure', () => {
    const ran = run({ valve: '60 Pa' }, [{}, { side: 'exhaust' }])
    expect(ran.si('p_room')).toBeCloseTo(60 + ran.si('dp_d_2'), 12)
    expect(ran.si('dp_all')).toBeCloseTo(60 + ran.si('dp_d_1') + ran.si('dp_d_2'), 12)
    expect(run({ valve: '60 Pa', overpressure: '60 Pa' }).satisfied('room_pressure')).toBe(true)
    expect(run({ valve: '59 Pa', overpressure: '60 Pa' }).satisfied('room_pressure')).toBe(false)
  })

  it('duct-loss: a fibrous filter follows the flow, a coarse one more than that', () => {
    const filter = { filter_loss: '400 Pa', filter_flow: '80 L/s' }
    expect(run(filter).si('dp_f')).toBeCloseTo(200, 9)
    expect(run({ ...filter, filter_exponent: '2' }).si('dp_f')).toBeCloseTo(100, 9)
  })

  it('duct-loss: people and blower can just do it, or just not', () => {
    const hand = run().si('P_hand')
    expect(run({ crank_power: `${hand * 1.001} W/person` }).satisfied('crank')).toBe(true)
    expect(run({ crank_power: `${hand * 0.999} W/person` }).satisfied('crank')).toBe(false)
    expect(run({ crankers: '2 person' }).si('P_hand')).toBeCloseTo(hand / 2, 12)
    const most = run().si('dp_all')
    expect(run({ blower_pressure: `${most * 1.001} Pa` }).satisfied('blower')).toBe(true)
    expect(run({ blower_pressure: `${most * 0.999} Pa` }).satisfied('blower')).toBe(false)
  })

  it.each([
    ['roughness of 0.05 of the bore', {}, { roughness: '7.5 mm' }, ['warning value-unusual']],
    ['roughness above it', {}, { roughness: '7.51 mm' }, ['warning value-unusual', 'error limit-exceeded']],
    ['the rated flow of the filter', { filter_flow: '40 L/s' }, {}, []],
    ['more than the rated flow', { filter_flow: '39.9 L/s' }, {}, ['warning limit-exceeded']],
    ['a valve of 250 Pa', { valve: '250 Pa' }, {}, []],
    ['a valve above it', { valve: '251 Pa' }, {}, ['warning limit-exceeded']],
    ['a loss of 5 kPa and more', { filter_loss: '5 kPa' }, {}, ['warning limit-exceeded']],
    ['a loss below it', { filter_loss: '4.9 kPa' }, {}, []],
    ['flow just turbulent', { flow: '7.2 L/s' }, {}, []],
    ['flow in between', { flow: '7.0 L/s' }, {}, ['warning limit-exceeded']],
  ])('duct-loss: %s says what it must', (_, more, row, said) => {
    const ran = run(more as Row, [row as Row])
    expect(rules(ran).sort()).toEqual([...said].sort())
  })

  it.each([
    ['flow', '0 L/s'],
    ['blower_efficiency', '0'],
    ['motor_efficiency', '1.01'],
    ['density', '0.59 kg/m^3'],
    ['viscosity', '3.1e-5 m^2/s'],
    ['filter_exponent', '2.1'],
    ['valve', '-1 Pa'],
    ['crankers', '0 person'],
  ])('duct-loss: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })
})
