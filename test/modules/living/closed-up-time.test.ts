import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { closedUpTime } from '../../../src/modules/living/closed-up-time.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  volume: '60 m^3',
  generation: '0.2 m^3/hr',
  leakage: '0 m^3/hr',
  wanted: '2 hr',
  co2_start: '0.1 percent',
  co2_limit: '1 percent',
  oxygen_limit: '19.5 percent',
  gain: '1000 W',
  area: '100 m^2',
  start_temperature: '18 degC',
  temperature_limit: '29 degC',
  thickness: '0.3 m',
}
const run = (more: Row = {}) => runModule(closedUpTime, { ...base, ...more })
const rules = (more: Row) =>
  run(more)
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const agreed = (ran: ReturnType<typeof run>) => ran.agrees.every(({ difference, band }) => difference <= band)

describe('closed-up-time', () => {
  it.each(['SI', 'US'] as const)('closed-up-time: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(closedUpTime, closedUpTime.example, { units }).diagnostics).toEqual([])
  })

  it('closed-up-time: sealed, the time grows with the volume and falls with what is given off', () => {
    expect(run({ volume: '120 m^3' }).si('t_c')).toBeCloseTo(2 * run().si('t_c'), 6)
    expect(run({ generation: '0.4 m^3/hr' }).si('t_o')).toBeCloseTo(run().si('t_o') / 2, 6)
  })

  it('closed-up-time: a little air hardly differs from none', () => {
    const [none, little] = [run(), run({ leakage: '0.001 m^3/hr' })]
    expect(little.si('t_c') / none.si('t_c')).toBeCloseTo(1, 4)
    expect(little.si('o_w') / none.si('o_w')).toBeCloseTo(1, 5)
  })

  it('closed-up-time: oxygen stands under that outdoors by the carbon dioxide above it, over the quotient', () => {
    for (const more of [{}, { leakage: '30 m^3/hr', co2_start: '0.3 percent' }]) {
      const ran = run(more)
      for (const [o, c] of [
        ['o_0', 'co2_start'],
        ['o_w', 'c_w'],
      ] as const) {
        expect((0.2095 - ran.si(o)) * 0.85).toBeCloseTo(ran.si(c) - 0.0004, 12)
      }
    }
  })

  it('closed-up-time: stale air at the start shortens the time of oxygen too, fresh air does not lengthen it', () => {
    expect(run({ co2_start: '0.3 percent' }).si('t_o')).toBeLessThan(run().si('t_o'))
    expect(run({ co2_start: '0' }).si('o_0')).toBe(0.2095)
  })

  it('closed-up-time: after one change of air 63.2 percent of the way is gone', () => {
    const ran = run({ leakage: '30 m^3/hr' })
    expect((ran.si('c_w') - 0.001) / (ran.si('c_s') - 0.001)).toBeCloseTo(1 - Math.exp(-1), 12)
  })

  // 0.96 % of carbon dioxide against 1.45 % of oxygen: the order turns where the limit stands 1.23 % above the start
  it('closed-up-time: 1 percent of carbon dioxide comes before 19.5 of oxygen, 1.3 percent after it', () => {
    const sealed = (co2_limit: string) => run({ co2_start: '0.04 percent', co2_limit })
    expect(sealed('1 percent').si('t_c')).toBeLessThan(sealed('1 percent').si('t_o'))
    expect(sealed('1.3 percent').si('t_c')).toBeGreaterThan(sealed('1.3 percent').si('t_o'))
  })

  it('closed-up-time: the state after the time to a limit is the limit', () => {
    for (const leakage of ['0 m^3/hr', '10 m^3/hr']) {
      const ran = run({ leakage })
      expect(run({ leakage, wanted: `${ran.si('t_c')} s` }).si('c_w')).toBeCloseTo(0.01, 10)
      expect(run({ leakage, wanted: `${ran.si('t_o')} s` }).si('o_w')).toBeCloseTo(0.195, 10)
    }
    const hot = run({ gain: '3000 W' })
    expect(run({ gain: '3000 W', wanted: `${hot.si('t_h')} s` }).si('theta_w')).toBeCloseTo(273.15 + 29, 6)
  })

  it('closed-up-time: air enough holds both limits for ever', () => {
    const ran = run({ leakage: '60 m^3/hr' })
    expect(ran.si('c_s')).toBeLessThan(0.01)
    expect([ran.si('t_c'), ran.si('t_o')]).toEqual([7200, 7200])
    expect(ran.satisfied('carbon_dioxide')).toBe(true)
  })

  it('closed-up-time: heat decides where walls are few, and at once where the film alone is too hot', () => {
    const few = run({ area: '13 m^2' })
    expect(few.si('t_closed')).toBe(few.si('t_h'))
    expect(run({ area: '10 m^2' }).si('t_h')).toBe(0)
    expect(run({ area: '10 m^2' }).satisfied('warmth')).toBe(false)
  })

  it.each(['carbon_dioxide', 'oxygen', 'warmth'] as const)('closed-up-time: %s is kept just before its time', check => {
    const name = { carbon_dioxide: 't_c', oxygen: 't_o', warmth: 't_h' }[check]
    const hours = run({ gain: '3000 W' }).si(name) / 3600
    const at = (share: number) => run({ gain: '3000 W', wanted: `${share * hours} hr` }).satisfied(check)
    expect(at(0.999)).toBe(true)
    expect(at(1.001)).toBe(false)
  })

  it('closed-up-time: steps of time agree with the closed forms, whatever the room', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 300 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 1, max: 40 }),
        (volume, leakage, hours) => {
          const ran = run({ volume: `${volume} m^3`, leakage: `${leakage} m^3/hr`, wanted: `${hours / 4} hr` })
          expect(ran.agrees.length).toBe(3)
          expect(agreed(ran)).toBe(true)
        },
      ),
      { numRuns: 12 },
    )
  })

  it.each([
    [{ co2_limit: '3 percent' }, []],
    [{ co2_limit: '3.1 percent' }, ['warning limit-exceeded', 'warning value-unusual']],
    [{ oxygen_limit: '19.4 percent' }, ['warning limit-exceeded']],
    [{ wanted: '7.5 hr' }, []],
    [{ wanted: '7.6 hr' }, ['warning limit-exceeded']],
    [{ co2_start: '1 percent' }, ['error limit-exceeded']],
    [{ co2_start: '0.99 percent' }, []],
    [{ oxygen_outdoor: '19.57 percent' }, ['error limit-exceeded']],
    [{ oxygen_outdoor: '19.58 percent' }, []],
    [{ start_temperature: '29 degC' }, ['error limit-exceeded']],
    [{ start_temperature: '28 degC' }, []],
  ])('closed-up-time: %j says %j', (more, said) => {
    expect(rules(more as Row).sort()).toEqual(said)
  })

  it.each([
    ['volume', '0 m^3'],
    ['co2_limit', '4.1 percent'],
    ['oxygen_limit', '15.9 percent'],
    ['quotient', '0.69'],
    ['leakage', '-1 m^3/hr'],
    ['generation', '0 m^3/hr'],
    ['film', '1.9 W/(m^2*K)'],
  ])('closed-up-time: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it('closed-up-time: the chart ends its curves where the formulas do', () => {
    for (const leakage of ['0 m^3/hr', '10 m^3/hr']) {
      const ran = run({ leakage })
      const curves = drawingOf(closedUpTime, { ...base, leakage }).shapes.filter(
        shape => shape.kind === 'line' && shape.weight === 'thick',
      )
      const [co2, oxygen] = curves.map(shape => pointsOf(shape).at(-1) ?? [0, 0])
      const end = run({ leakage, wanted: `${co2?.[0]} hr` })
      expect(co2?.[1]).toBeCloseTo(100 * end.si('c_w'), 9)
      expect(oxygen?.[1]).toBeCloseTo(100 * end.si('o_w'), 9)
      expect(co2?.[0]).toBeCloseTo((1.15 * Math.max(7200, Math.min(ran.si('t_closed'), 21600))) / 3600, 9)
    }
  })
})
