import { describe, expect, it } from 'vitest'
import { wasteStore } from '../../../src/modules/living/waste-store.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  people: '20 person',
  days: '10 day',
  diet: 'temperate',
  flush: '0.18 L/(day*person)',
  tank: '300 L',
  emptied_every: '10 day',
  toilets: '1',
  washing: '4 L/(day*person)',
  grey_tank: '800 L',
  bins: '40 L',
}
const run = (more: Row = {}) => runModule(wasteStore, { ...base, ...more })
const rules = (more: Row) =>
  run(more)
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)

describe('waste-store', () => {
  it.each(['SI', 'US'] as const)('waste-store: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(wasteStore, wasteStore.example, { units }).diagnostics).toEqual([])
  })

  it.each([
    ['tank_holds', { tank: '300 L' }, { tank: '299 L' }],
    ['tank_holds', { emptied_every: '5 day', tank: '150 L' }, { emptied_every: '5 day', tank: '149 L' }],
    ['tank_holds', { emptied_every: '30 day' }, { emptied_every: '30 day', tank: '299 L' }],
    ['toilets_enough', { people: '20 person' }, { people: '21 person' }],
    ['toilets_enough', { people: '40 person', toilets: '2' }, { people: '41 person', toilets: '2' }],
    ['grey_holds', {}, { grey_tank: '799 L' }],
    ['bins_hold', {}, { bins: '39.9 L' }],
  ] as const)('waste-store: %s with %j, not with %j', (check, enough, short) => {
    expect(run(enough).satisfied(check)).toBe(true)
    expect(run(short).satisfied(check)).toBe(false)
  })

  it('waste-store: volumes grow with people and days, the tank fills the sooner', () => {
    expect(run({ people: '40 person' }).si('V_e')).toBeCloseTo(2 * run().si('V_e'), 12)
    expect(run({ days: '20 day' }).si('V_grey')).toBeCloseTo(2 * run().si('V_grey'), 12)
    expect(run({ people: '40 person' }).si('t_tank')).toBeCloseTo(run().si('t_tank') / 2, 6)
    expect(run({ days: '20 day' }).si('t_tank')).toBe(run().si('t_tank'))
  })

  it('waste-store: less waste water where some of it is drunk', () => {
    expect(run({ share: '0.8' }).si('V_grey')).toBeCloseTo(0.8 * run().si('V_grey'), 12)
  })

  it('waste-store: says where a toilet is flushed', () => {
    expect(rules({ flush: '3.68 L/(day*person)' })).toEqual([])
    expect(rules({ flush: '3.69 L/(day*person)' })).toEqual(['warning limit-exceeded'])
  })

  it.each([
    ['flush', '-0.1 L/(day*person)'],
    ['tank', '-1 L'],
    ['emptied_every', '0 day'],
    ['share', '0.49'],
    ['share', '1.01'],
    ['people', '0.5 person'],
  ])('waste-store: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it('waste-store: gallons are shown in US units', () => {
    expect(runModule(wasteStore, base, { units: 'US' }).shown('V_grey')).toBe('211.3 gal')
  })
})
