import { describe, expect, it } from 'vitest'
import { carbonMonoxide } from '../../../src/modules/living/carbon-monoxide.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  volume: '100 m^3',
  supply: '100 m^3/hr',
  burning: '1 hr',
  exposure: 'NIOSH 10 h',
  leaving: '5 min',
}
const leak: Row = { gas: '10 m^3/hr', monoxide: '1000 ppm' }
const run = (more: Row = {}, sources: readonly Row[] = [leak]) =>
  runModule(carbonMonoxide, { ...base, sources: sources.map(source => ({ ...leak, ...source })), ...more })
const rules = (more: Row, source: Row = {}) =>
  run(more, [source])
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const ppm = (ran: ReturnType<typeof run>, name: string) => 1e6 * ran.si(name)
const minutes = (ran: ReturnType<typeof run>, name: string) => ran.si(name) / 60

describe('carbon-monoxide', () => {
  it.each(['SI', 'US'] as const)('carbon-monoxide: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(carbonMonoxide, carbonMonoxide.example, { units }).diagnostics).toEqual([])
  })

  // memory: WHO 2010 and 2021, 29 CFR 1910.1000, NIOSH Pocket Guide; 1 ppm is 1.145 mg/m³ at 25 °C (28.01 over 24.45)
  it.each([
    ['WHO 24 h', 4 / 1.145, 24],
    ['WHO 8 h', 10 / 1.145, 8],
    ['WHO 1 h', 35 / 1.145, 1],
    ['NIOSH 10 h', 35, 10],
    ['OSHA 8 h', 50, 8],
  ])('carbon-monoxide: the limit %s is %d ppm for %d hours', (exposure, limit, hours) => {
    expect(Math.abs(ppm(run({ exposure }), 'chi_lim') / limit - 1)).toBeLessThan(0.002)
    expect(run({ exposure }).si('t_lim')).toBe(hours * 3600)
  })

  it('carbon-monoxide: what several sources give off adds up, on top of the air outdoors', () => {
    expect(ppm(run({}, [{}, { gas: '20 m^3/hr' }]), 'chi_s')).toBeCloseTo(300, 9)
    expect(ppm(run({ outdoor: '5 ppm' }), 'chi_s')).toBeCloseTo(105, 9)
    expect(ppm(run({ supply: '50 m^3/hr' }), 'chi_s')).toBeCloseTo(200, 9)
  })

  it('carbon-monoxide: with hardly any air the gas rises evenly, as in a sealed room', () => {
    const ran = run({ supply: '0.01 m^3/hr' })
    expect(ppm(ran, 'chi_t')).toBeCloseTo(100, 1)
    expect(ran.agrees.every(({ difference, band }) => difference <= band)).toBe(true)
  })

  it('carbon-monoxide: the limit is just kept to the end, or just not', () => {
    const end = ppm(run({ exposure: 'OSHA 8 h', burning: '0.693 hr' }), 'chi_t')
    expect(end).toBeCloseTo(50, 1)
    expect(run({ exposure: 'OSHA 8 h', burning: '0.693 hr' }).satisfied('breathable')).toBe(true)
    expect(run({ exposure: 'OSHA 8 h', burning: '0.694 hr' }).satisfied('breathable')).toBe(false)
  })

  // memory: EN 50291-1, the alarm sounds at 50 ppm within 90 min, at 100 ppm within 40 min, at 300 ppm within 3 min
  it('carbon-monoxide: the alarm sounds at the latest by the first of its test levels', () => {
    const slow = run({ burning: '8 hr' }, [{ gas: '25 m^3/hr' }])
    expect(minutes(slow, 't_a')).toBeCloseTo(60 * Math.log(250 / 150) + 40, 6)
    expect(slow.has('t_300')).toBe(false)
    const fast = run({ burning: '8 hr' }, [{ gas: '100 m^3/hr' }])
    expect(minutes(fast, 't_a')).toBeCloseTo(60 * Math.log(1000 / 700) + 3, 6)
  })

  it('carbon-monoxide: people are just out in time, or just not', () => {
    const slow = [{ gas: '25 m^3/hr' }]
    const free = 60 * (Math.log(250 / 50) - Math.log(250 / 150)) - 40
    expect(free).toBeGreaterThan(10)
    expect(run({ leaving: `${free - 0.1} min` }, slow).satisfied('out_in_time')).toBe(true)
    expect(run({ leaving: `${free + 0.1} min` }, slow).satisfied('out_in_time')).toBe(false)
    expect(run({ leaving: '1 min' }, [{ gas: '100 m^3/hr' }]).satisfied('out_in_time')).toBe(false)
  })

  it('carbon-monoxide: a room that never comes to the level has the whole time', () => {
    const ran = run({ burning: '7 hr' })
    expect(ran.si('t_danger')).toBe(7 * 3600)
    expect(ran.has('t_a')).toBe(false)
  })

  it.each([
    [{ burning: '10 hr' }, {}, []],
    [{ burning: '10.1 hr' }, {}, ['warning limit-exceeded']],
    [{}, { gas: '100 m^3/hr' }, []],
    [{}, { gas: '101 m^3/hr' }, ['warning limit-exceeded']],
  ])('carbon-monoxide: %j with a source of %j says %j', (more, source, said) => {
    expect(rules(more as Row, source as Row)).toEqual(said)
  })

  it.each([
    ['supply', '0 m^3/hr'],
    ['leave_level', '100 ppm'],
    ['leave_level', '1201 ppm'],
    ['outdoor', '31 ppm'],
    ['burning', '0 hr'],
  ])('carbon-monoxide: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it.each([
    ['19 m^3/hr', 1],
    ['21 m^3/hr', 2],
  ])('carbon-monoxide: with %s of gas the chart has %d dashed levels', (gas, levels) => {
    const { shapes } = drawingOf(carbonMonoxide, { ...base, sources: [{ ...leak, gas }] })
    expect(shapes.filter(shape => shape.kind === 'line' && shape.dashed === true)).toHaveLength(levels)
  })

  it('carbon-monoxide: the chart ends where the room stands when it ends', () => {
    const { shapes } = drawingOf(carbonMonoxide, { ...base, sources: [leak] })
    const curve = shapes.filter(shape => shape.kind === 'line' && shape.weight === 'thick').map(pointsOf)[0] ?? []
    expect(curve.at(0)?.[1]).toBeCloseTo(0, 9)
    expect(curve.at(-1)?.[0]).toBeCloseTo(1, 9)
    expect(curve.at(-1)?.[1]).toBeCloseTo(63.21, 1)
  })
})
