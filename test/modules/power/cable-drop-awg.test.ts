import { describe, expect, it } from 'vitest'
import { cableDrop } from '../../../src/modules/power/cable-drop.ts'
import { cableDropAwg } from '../../../src/modules/power/cable-drop-awg.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const cable: Inputs = {
  current: '10 A',
  run: '30 ft',
  voltage: '12 V',
  drop_limit: '10 percent',
  conductor_temperature: '40 degC',
  fuse: '15 A',
  ampacity: '25 A',
}
const run = (more: Inputs = {}) => runModule(cableDropAwg, { gauge: 'AWG 10', make: 'stranded', ...cable, ...more })

describe('cable drop by gauge', () => {
  it.each(['SI', 'US'] as const)('cable-drop-awg: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(cableDropAwg, cableDropAwg.example, { units }).diagnostics).toEqual([])
  })

  it('cable-drop-awg: cools along the line of the code', () => {
    expect(
      run({ conductor_temperature: '20 degC' }).si('R_t') / run({ conductor_temperature: '75 degC' }).si('R_t'),
    ).toBeCloseTo(1 - 0.00323 * 55, 9)
  })

  it('cable-drop-awg: six gauges lie in order beside the metric sizes that bracket their areas', () => {
    const metric = (area: string) =>
      runModule(cableDrop, { conductor: 'plain copper, class 1 or 2', area, ...cable }).si('V_drop')
    for (const [gauge, larger, smaller] of [
      ['AWG 14', '2.5 mm^2', '1.5 mm^2'],
      ['AWG 10', '6 mm^2', '4 mm^2'],
      ['AWG 8', '10 mm^2', '6 mm^2'],
      ['AWG 4', '25 mm^2', '16 mm^2'],
      // 35 mm² is nominal: its 0.524 ohm/km is the copper of 32.9 mm², under the 33.6 mm² of this gauge
      ['AWG 2', '50 mm^2', '25 mm^2'],
      ['AWG 4/0', '120 mm^2', '95 mm^2'],
    ] as const) {
      const drop = run({ gauge }).si('V_drop')
      expect(drop, gauge).toBeGreaterThan(metric(larger))
      expect(drop, gauge).toBeLessThan(metric(smaller))
    }
  })

  it("cable-drop-awg: the maker's resistance is used where it is given", () => {
    const given = run({ maker_resistance: '1.2 mohm/ft', conductor_temperature: '20 degC' })
    expect(given.si('V_drop')).toBeCloseTo(2 * 30 * 10 * 0.0012, 9)
    expect(given.has('R_75')).toBe(false)
  })

  it('cable-drop-awg: large gauges have no solid wire', () => {
    expect(run({ gauge: 'AWG 8', make: 'solid' }).errors).toEqual([])
    expect(run({ gauge: 'AWG 6', make: 'solid' }).errors.map(({ rule }) => rule)).toEqual(['lookup-outside-table'])
  })

  it('cable-drop-awg: a cable that takes the whole voltage is refused', () => {
    const most = 12 / (2 * 10 * 0.00124 * (1 - 0.00323 * 35))
    expect(run({ run: `${most * 0.999} ft` }).errors).toEqual([])
    expect(run({ run: `${most * 1.001} ft` }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  // E2: the same drop in the circular-mil form, K 11 and 10 400 cmil: 2.11 V, printed cut off (looked up)
  it('cable-drop-awg: the published circular-mil form gives 2.11 V', () => {
    const resistance = `${11 / 10.4} mohm/ft`
    const drop = run({ run: '100 ft', voltage: '48 V', maker_resistance: resistance, conductor_temperature: '20 degC' })
    expect(Math.abs(drop.si('V_drop') / 2.11 - 1)).toBeLessThan(0.003)
  })
})
