import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayCount, isDate, monthLength, monthsLater } from '../../../src/modules/living/civil-date.ts'
import { waterStore } from '../../../src/modules/living/water-store.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  people: '10 person',
  days: '14 day',
  drinking: '3 L/(day*person)',
  washing: '2 L/(day*person)',
  cooking: '3 L/(day*person)',
  guidance: 'Sphere basic',
  reserve: '25 percent',
  filled_year: '2026',
  filled_month: '1',
  filled_day: '15',
}
const run = (more: Row = {}, vessels: readonly Row[] = [{ count: '7', size: '200 L' }]) =>
  runModule(waterStore, { ...base, vessels, ...more })
const rules = (more: Row) =>
  run(more)
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const due = (ran: ReturnType<typeof run>) => [ran.si('due_year'), ran.si('due_month'), ran.si('due_day')]
const filled = (year: number, month: number, day: number) => ({
  filled_year: `${year}`,
  filled_month: `${month}`,
  filled_day: `${day}`,
})

describe('water-store', () => {
  it.each(['SI', 'US'] as const)('water-store: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(waterStore, waterStore.example, { units }).diagnostics).toEqual([])
  })

  it('water-store: vessels that hold just enough are enough', () => {
    expect(run().shown('V_w')).toBe('1400 L')
    expect(run().satisfied('stored')).toBe(true)
    expect(run({}, [{ count: '7', size: '199 L' }]).satisfied('stored')).toBe(false)
  })

  it('water-store: the largest vessel may be lost where the reserve is as large', () => {
    const vessels = (one: string, rest: string) => [
      { count: '1', size: one },
      { count: '10', size: rest },
    ]
    expect(run({}, vessels('280 L', '112 L')).satisfied('one_lost')).toBe(true)
    expect(run({}, vessels('289 L', '111 L')).satisfied('one_lost')).toBe(false)
    expect(run({}, [{ count: '1', size: '2000 L' }]).satisfied('one_lost')).toBe(false)
  })

  it('water-store: twice the people or days need twice the water and last half as long', () => {
    expect(run({ people: '20 person' }).si('V_w')).toBeCloseTo(2 * run().si('V_w'), 9)
    expect(run({ days: '28 day' }).si('V_w')).toBeCloseTo(2 * run().si('V_w'), 9)
    expect(run({ people: '20 person' }).si('t_water')).toBeCloseTo(run().si('t_water') / 2, 6)
  })

  it.each([
    ['US household', '2.5', '1.284', '1.28'],
    ['Sphere short term', '2.5', '4.5', '4.49'],
    ['Sphere basic', '2.5', '5', '4.99'],
  ])('water-store: %s is just reached, or just missed', (guidance, drink, enough, short) => {
    const rate = (wash: string) =>
      run({
        guidance,
        drinking: `${drink} L/(day*person)`,
        cooking: '1e-3 L/(day*person)',
        washing: `${wash} L/(day*person)`,
      })
    expect(rate(enough).satisfied('rate_enough')).toBe(true)
    expect(rate(short).satisfied('rate_enough')).toBe(false)
  })

  it('water-store: survival water is 2.5 L, and below 2 L nobody lives', () => {
    const drink = (litres: string) => ({ drinking: `${litres} L/(day*person)` })
    expect(run(drink('2.5')).satisfied('drinking_enough')).toBe(true)
    expect(run(drink('2.4')).satisfied('drinking_enough')).toBe(false)
    expect(rules(drink('2'))).toEqual(['warning value-unusual'])
    expect(rules(drink('1.9'))).toContain('error value-outside-range')
  })

  it('water-store: says where water stands longer than six months', () => {
    expect(rules({ interval: '6' })).toEqual([])
    expect(rules({ interval: '7' })).toEqual(['warning limit-exceeded'])
  })

  it('water-store: the end of a month is kept', () => {
    expect(due(run(filled(2026, 8, 31)))).toEqual([2027, 2, 28])
    expect(due(run(filled(2027, 8, 31)))).toEqual([2028, 2, 29])
    expect(due(run(filled(2026, 12, 1)))).toEqual([2027, 6, 1])
  })

  it.each([
    ['30 February', filled(2026, 2, 30)],
    ['half a day', { ...filled(2026, 2, 1), filled_day: '1.5' }],
    ['half a month more', { interval: '1.5' }],
  ])('water-store: %s is no date', (_, more) => {
    expect(run(more).errors.length).toBeGreaterThan(0)
  })

  it.each([
    ['people', '0 person'],
    ['days', '0 day'],
    ['reserve', '-1 percent'],
    ['interval', '0'],
    ['filled_month', '13'],
  ])('water-store: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })
})

// outside check: the calendar of ECMAScript, which counts milliseconds of the same Gregorian calendar
describe('water-store: dates in the calendar', () => {
  const utc = (year: number, month: number, day: number) => Date.UTC(year, month - 1, day)
  const someDate = fc.record({
    year: fc.integer({ min: 1990, max: 2200 }),
    month: fc.integer({ min: 1, max: 12 }),
    day: fc.integer({ min: 1, max: 31 }),
  })

  it('water-store: a month is as long as the calendar says', () => {
    for (let year = 1990; year <= 2200; year += 1)
      for (let month = 1; month <= 12; month += 1)
        expect(monthLength(year, month)).toBe(new Date(Date.UTC(year, month, 0)).getUTCDate())
  })

  it('water-store: days between two dates are those of the calendar', () => {
    fc.assert(
      fc.property(someDate, someDate, (a, b) => {
        fc.pre(isDate(a) && isDate(b))
        expect(dayCount(b) - dayCount(a)).toBe((utc(b.year, b.month, b.day) - utc(a.year, a.month, a.day)) / 86400000)
      }),
    )
  })

  it('water-store: from a day up to the 28th twice six months are twelve', () => {
    fc.assert(
      fc.property(someDate, date => {
        fc.pre(date.day <= 28)
        expect(monthsLater(monthsLater(date, 6), 6)).toEqual(monthsLater(date, 12))
      }),
    )
  })
})
