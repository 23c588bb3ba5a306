import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { storesRegister } from '../../../src/modules/living/stores-register.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const water: Row = {
  item: 'water',
  kind: 'filled water',
  stored_year: '2026',
  stored_month: '8',
  stored_day: '31',
  months: '6',
}
const base: Row = { now_year: '2026', now_month: '11', now_day: '2' }
const run = (items: readonly Row[] = [{}], more: Row = {}) =>
  runModule(storesRegister, { ...base, items: items.map(item => ({ ...water, ...item })), ...more })
const rules = (ran: ReturnType<typeof run>) =>
  ran.diagnostics
    .filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const on = (year: number, month: number, day: number): Row => ({
  now_year: `${year}`,
  now_month: `${month}`,
  now_day: `${day}`,
})

describe('stores-register', () => {
  it.each(['SI', 'US'] as const)('stores-register: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(storesRegister, storesRegister.example, { units }).diagnostics).toEqual([])
  })

  it('stores-register: the end of a month is kept', () => {
    const ran = run()
    expect([ran.si('due_year_1'), ran.si('due_month_1'), ran.si('due_day_1')]).toEqual([2027, 2, 28])
  })

  // outside check: days between dates by the calendar of ECMAScript
  it('stores-register: days in store and days left are those of the calendar', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        fc.integer({ min: 1, max: 6 }),
        (month, date, months) => {
          const ran = run([
            { stored_year: '2025', stored_month: `${month}`, stored_day: `${date}`, months: `${months}` },
          ])
          const [then, now] = [Date.UTC(2025, month - 1, date), Date.UTC(2026, 10, 2)]
          expect(ran.si('t_age_1')).toBe((now - then) / 1000)
          expect(ran.si('t_left_1')).toBe((Date.UTC(2025, month - 1 + months, date) - now) / 1000)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('stores-register: on the day it is due an item is not overdue, a day later it is', () => {
    expect(run([{}], on(2027, 2, 28)).satisfied('none_overdue')).toBe(true)
    expect(run([{}], on(2027, 3, 1)).satisfied('none_overdue')).toBe(false)
    expect(run([{}], on(2027, 3, 1)).si('t_left_1')).toBe(-86400)
  })

  it('stores-register: the first of several items counts', () => {
    const ran = run([{}, { months: '3' }, { months: '4' }])
    expect(ran.si('t_next')).toBe(ran.si('t_left_2'))
  })

  it.each([
    ['filled water', 6],
    ['packed food', 12],
    ['diesel', 6],
    ['test run', 1],
  ])('stores-register: %s is turned over within %d months', (kind, most) => {
    expect(run([{ kind, months: `${most}` }]).satisfied('often_enough')).toBe(true)
    expect(run([{ kind, months: `${most + 1}` }]).satisfied('often_enough')).toBe(false)
  })

  it('stores-register: where the date of the maker counts, no kind is held against it', () => {
    const ran = run([{ kind: 'maker date', months: '360' }])
    expect(ran.errors).toEqual([])
    expect(() => ran.satisfied('often_enough')).toThrow()
  })

  it('stores-register: says what falls due within the time of notice', () => {
    expect(rules(run([{}], on(2027, 1, 29)))).toEqual([])
    expect(rules(run([{}], on(2027, 1, 30)))).toEqual(['warning limit-exceeded'])
    expect(rules(run([{}], { ...on(2027, 1, 30), notice: '7 day' }))).toEqual([])
  })

  it('stores-register: nothing is stored after the day of the register, and a date that is none is refused', () => {
    expect(rules(run([{}], on(2026, 8, 31)))).toEqual([])
    expect(rules(run([{}], on(2026, 8, 30)))).toContain('error limit-exceeded')
    expect(run([{ stored_month: '9' }]).errors.length).toBeGreaterThan(0)
    expect(run([{ months: '1.5' }]).errors.length).toBeGreaterThan(0)
    expect(run([{}], on(2027, 2, 29)).errors.length).toBeGreaterThan(0)
  })

  it.each([
    ['months', '0'],
    ['months', '361'],
    ['stored_month', '13'],
    ['stored_year', '1989'],
  ])('stores-register: refuses %s of %s', (name, value) => {
    expect(run([{ [name]: value }]).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it('stores-register: the calendar says each date, and draws what is overdue behind today', () => {
    const drawing = drawingOf(storesRegister, {
      ...base,
      ...on(2027, 3, 10),
      items: [water, { ...water, item: 'oats', kind: 'packed food', months: '12' }],
    })
    expect(drawing.says).toContain('water is due on 2027-02-28, oats is due on 2027-08-31')
    const ends = drawing.shapes.flatMap(shape => (shape.kind === 'polygon' ? [shape.points[1]?.[0]] : []))
    expect(ends).toEqual([-10, 174])
  })

  it('stores-register: over many years the calendar marks years alone', () => {
    const drawing = drawingOf(storesRegister, { ...base, items: [{ ...water, kind: 'maker date', months: '120' }] })
    const marks = drawing.shapes.flatMap(shape => (shape.kind === 'label' ? [shape.label.text ?? ''] : []))
    expect(marks).toContain('2030')
    expect(marks).not.toContain('7')
  })
})
