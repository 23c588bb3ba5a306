import type { Method } from '../method.ts'
import type { Input, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { ratio, solve } from '../words.ts'
import { isDate, monthsLater } from './civil-date.ts'

/** A date some calendar months after another. Refuses what is no date and months that are not whole. */
export const calendarMonths: Method = {
  id: 'calendar-months',
  title: 'Date in the calendar',
  says: 'Calendar months are counted on; where that month has no such day, its last day is taken.',
  takes: { year: 'ratio', month: 'ratio', day: 'ratio', months: 'ratio' },
  run: numbers => {
    const [year, month, day, months] = ['year', 'month', 'day', 'months'].map(name => Number(numbers[name]))
    const from = { year: year ?? Number.NaN, month: month ?? Number.NaN, day: day ?? Number.NaN }
    if (!isDate(from)) return { ok: false, says: 'there is no such date in the calendar' }
    if (!Number.isInteger(months)) return { ok: false, says: 'the months are not a whole number' }
    const to = monthsLater(from, months ?? 0)
    const back = 12 * to.year + to.month - 12 * from.year - from.month
    return { ok: true, values: { ...to }, verified: `it lies ${back} calendar months later` }
  },
}

type Dated = Readonly<Record<'year' | 'month' | 'day', Input & { readonly kind: 'quantity' }>>

/** Year, month and day of something, as three inputs: `what`, as in `year of packing`. */
export const dateInputs = (what: string, mark: string): Dated => ({
  year: ratio({ says: `year of ${what}`, symbol: `y_${mark}`, least: '1990', most: '2200' }),
  month: ratio({ says: `month of ${what}`, symbol: `m_${mark}`, least: '1', most: '12' }),
  day: ratio({ says: `day of ${what}`, symbol: `d_${mark}`, least: '1', most: '31' }),
})

/** The date by which something is to be used or renewed, so many months after `from`. */
export const dueDate = (
  from: { readonly year: string; readonly month: string; readonly day: string; readonly months: string },
  says: string,
): Step =>
  solve(calendarMonths, {
    takes: from,
    gives: {
      year: { dimension: 'ratio', name: 'due_year', says: 'year', symbol: 'y_u', whole: true },
      month: { dimension: 'ratio', name: 'due_month', says: 'month', symbol: 'm_u', whole: true },
      day: { dimension: 'ratio', name: 'due_day', says: 'day', symbol: 'd_u', whole: true },
    },
    says,
    source: cite('practice', 'turn-over by the calendar'),
  })
