import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { batteryBank } from '../../../src/modules/power/battery-bank.ts'
import { dcLoad } from '../../../src/modules/power/dc-load.ts'
import { pvArray } from '../../../src/modules/power/pv-array.ts'
import { runModule } from '../run-module.ts'

interface Load {
  readonly watts: number
  readonly hours: number
  readonly start: number
}
const Ah = 3600

const load = fc.record({
  watts: fc.integer({ min: 1, max: 300 }),
  hours: fc.integer({ min: 1, max: 24 }),
  start: fc.integer({ min: 0, max: 23 }),
})
const loads = fc.array(load, { minLength: 1, maxLength: 6 })

const listed = (some: readonly Load[]) =>
  runModule(dcLoad, {
    voltage: '24 V',
    least_voltage: '21 V',
    standing_power: '0 W',
    loads: some.map(({ watts, hours }) => ({ count: '1', power: `${watts} W`, duty: `${hours} hr` })),
  })

const bankFor = (daily: number, more: Readonly<Record<string, string>> = {}) =>
  runModule(batteryBank, {
    method: 'worksheet',
    chemistry: 'lead-acid',
    daily_charge: `${daily} Ah`,
    running_current: '1 A',
    autonomy: '3 day',
    voltage: '24 V',
    discharge_most: '0.5',
    margin: '1',
    cell_temperature: '80 degF',
    unit_capacity: '100 Ah',
    unit_voltage: '12 V',
    strings: '4',
    rated_time: '20 hr',
    charge_efficiency: '0.9',
    ...more,
  })

/** Ampere-hours drawn at 24 V in the hour of the day, each load running on from its own start. */
const drawAt = (some: readonly Load[], hour: number): number =>
  some.reduce((sum, { watts, hours, start }) => sum + ((hour - start + 24) % 24 < hours ? watts / 24 : 0), 0)

describe('power chain', () => {
  it('battery-bank: loads listed, then run hour by hour at hours of their own, empty the bank to the depth counted on', () => {
    fc.assert(
      fc.property(loads, fc.integer({ min: 1, max: 10 }), fc.integer({ min: 20, max: 80 }), (some, days, depth) => {
        const daily = listed(some).si('Q_day') / Ah
        const bank = bankFor(daily, { autonomy: `${days} day`, discharge_most: `${depth / 100}`, margin: '1.15' })
        const full = bank.si('C_req') / bank.si('k_all') / Ah
        let left = full
        for (let hour = 0; hour < 24 * days; hour += 1) left -= drawAt(some, hour % 24)
        expect(1 - left / full).toBeCloseTo(depth / 100, 9)
        expect(bank.si('D_size')).toBeCloseTo(depth / 100, 9)
      }),
      { numRuns: 30 },
    )
  })

  it('battery-bank: a chosen bank run hour by hour lasts as many days as it is said to', () => {
    fc.assert(
      fc.property(loads, fc.integer({ min: 1, max: 20 }), (some, strings) => {
        const daily = listed(some).si('Q_day') / Ah
        const bank = bankFor(daily, { strings: `${strings}` })
        let left = bank.si('C_net') / Ah
        const floor = left * (1 - bank.si('D_use'))
        let hours = 0
        while (left - drawAt(some, hours % 24) >= floor - 1e-9) {
          left -= drawAt(some, hours % 24)
          hours += 1
        }
        // whole days agree; within the last day the loads are not even
        expect(Math.abs(hours / 24 - bank.si('t_hold') / 86400)).toBeLessThan(1)
      }),
      { numRuns: 30 },
    )
  })

  it('pv-array: the array that is needed puts back the daily charge, and fills an empty bank in the days of its surplus', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 300 }),
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 110, max: 140 }),
        fc.constantFrom('tracking', 'direct'),
        (daily, sun, ratio, regulator) => {
          const asked = { ...pvArray.example, daily_charge: `${daily} Ah`, irradiation: `${sun / 10} kWh/(m^2*day)` }
          const more = { regulator, charge_voltage: '27.6 V', reserve_ratio: `${ratio / 100}`, series: '2' }
          const needed = runModule(pvArray, { ...asked, ...more }).si('n_req')
          const side_by_side = `${Math.ceil(needed / 2)}`
          fc.pre(Number(side_by_side) <= 100)
          const array = runModule(pvArray, { ...asked, ...more, side_by_side })
          const bank = bankFor(daily)
          expect(array.si('Q_in')).toBe(bank.si('Q_in'))
          const gain = (array.si('Q_array') / Ah) * 0.9 - daily
          expect(gain).toBeGreaterThanOrEqual((ratio / 100 - 1) * daily - 1e-9)
          // by the day: an empty bank of three days, at the mean sun, with the loads on
          const capacity = 3 * daily
          let charge = 0
          let days = 0
          while (charge < capacity - 1e-9 && days < 1000) {
            charge = Math.min(capacity, charge + gain)
            days += 1
          }
          expect(days).toBeLessThanOrEqual(Math.ceil(3 / (ratio / 100 - 1) - 1e-9))
        },
      ),
      { numRuns: 25 },
    )
  })

  it('pv-array: one panel fewer than needed does not give the charge wanted', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 200 }), fc.integer({ min: 10, max: 60 }), (daily, sun) => {
        const more = { daily_charge: `${daily} Ah`, irradiation: `${sun / 10} kWh/(m^2*day)`, series: '1' }
        const needed = runModule(pvArray, { ...pvArray.example, ...more }).si('n_req')
        fc.pre(needed > 1 && needed <= 100)
        const at = (n: number) => runModule(pvArray, { ...pvArray.example, ...more, side_by_side: `${n}` })
        expect(at(needed).satisfied('enough')).toBe(true)
        expect(at(needed - 1).satisfied('enough')).toBe(false)
      }),
      { numRuns: 15 },
    )
  })
})
