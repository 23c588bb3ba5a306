import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dcLoad } from '../../../src/modules/power/dc-load.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>

const lamp: Row = { load: 'lamps', count: '4', power: '6 W', duty: '5 hr' }
const pump: Row = { load: 'pump', count: '2', power: '105 W', duty: '1 hr', starting: '4' }
const run = (loads: readonly Row[], more: Row = {}) =>
  runModule(dcLoad, { voltage: '12 V', least_voltage: '10.5 V', standing_power: '0 W', loads, ...more })
const Wh = 3600

describe('dc load', () => {
  it.each(['SI', 'US'] as const)('dc-load: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(dcLoad, dcLoad.example, { units }).diagnostics).toEqual([])
  })

  it('dc-load: a converter draws more than it gives, and the standing draw runs all day', () => {
    const ran = run([{ ...lamp, efficiency: '0.8' }], { standing_power: '2 W' })
    expect(ran.si('P_l_1')).toBeCloseTo(30, 12)
    expect(ran.si('E_day') / Wh).toBeCloseTo(150 + 48, 9)
    expect(ran.si('I_run')).toBeCloseTo(32 / 10.5, 12)
  })

  it('dc-load: of several starts the largest counts, once, and of one machine', () => {
    const ran = run([lamp, pump, { ...lamp, starting: '2' }])
    expect(ran.si('I_start')).toBeCloseTo((3 * 105) / 10.5, 12)
    expect(ran.si('I_peak')).toBeCloseTo((24 + 210 + 24 + 315) / 10.5, 12)
  })

  it('dc-load: what is shed keeps its energy and leaves the peak, its start included', () => {
    const [kept, shed] = [run([lamp, pump]), run([lamp, { ...pump, at_peak: 'shed' }])]
    expect(shed.si('E_day')).toBe(kept.si('E_day'))
    expect(shed.si('I_peak')).toBeCloseTo(24 / 10.5, 12)
  })

  it('dc-load: energy does not know the voltage; charge and current go down with it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 2, max: 8 }),
        (power, duty, times) => {
          const loads = [{ count: '1', power: `${power} W`, duty: `${duty} hr` }]
          const once = run(loads, { least_voltage: '12 V' })
          const more = run(loads, { voltage: `${12 * times} V`, least_voltage: `${12 * times} V` })
          expect(more.si('E_day')).toBeCloseTo(once.si('E_day'), 6)
          expect(more.si('Q_day') * times).toBeCloseTo(once.si('Q_day'), 6)
          expect(more.si('I_peak') * times).toBeCloseTo(once.si('I_peak'), 9)
        },
      ),
      { numRuns: 20 },
    )
  })

  it('dc-load: an end of discharge above the nominal voltage is refused', () => {
    expect(run([lamp], { least_voltage: '12 V' }).errors).toEqual([])
    expect(run([lamp], { least_voltage: '12.1 V' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it('dc-load: says where the voltage sinks unusually low', () => {
    expect(run([lamp], { least_voltage: '9.6 V' }).limits[1]?.kept).toBe(true)
    expect(run([lamp], { least_voltage: '9.5 V' }).limits[1]?.kept).toBe(false)
  })

  it('dc-load: a list that uses nothing is refused', () => {
    const idle = { ...lamp, duty: '0 hr' }
    expect(run([idle]).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(run([idle], { standing_power: '0.1 W' }).errors).toEqual([])
  })

  it.each([
    ['voltage', '4.9 V'],
    ['voltage', '121 V'],
    ['least_voltage', '0 V'],
    ['standing_power', '-1 W'],
  ])('dc-load: refuses %s of %s', (name, value) => {
    expect(run([lamp], { [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it.each([
    { count: '0.5' },
    { power: '0 W' },
    { duty: '24.1 hr' },
    { efficiency: '1.01' },
    { efficiency: '0.29' },
    { starting: '0.9' },
    { starting: '10.1' },
  ])('dc-load: refuses a load with %o', field => {
    expect(run([{ ...lamp, ...(field as Row) }]).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })

  it('dc-load: draws a bar for each load and for the standing draw, as long as their energies', () => {
    const drawing = drawingOf(dcLoad, {
      voltage: '12 V',
      least_voltage: '10.5 V',
      standing_power: '5 W',
      loads: [lamp, pump],
    })
    const widths = drawing.shapes.flatMap(shape => (shape.kind === 'polygon' ? [shape.points[1]?.[0] ?? 0] : []))
    expect(widths).toHaveLength(3)
    expect((widths[0] ?? 0) / (widths[1] ?? 1)).toBeCloseTo(120 / 210, 9)
    expect(drawing.says).toContain('3 bars')
    expect(drawing.says).toContain('pump')
  })
})
