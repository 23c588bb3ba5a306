import type { Method } from '../method.ts'
import { type CivilDate, dayCount, isDate, monthsLater } from './civil-date.ts'

const day = 86400

/** When something stored is due, how long it has been in store and how long it has still. Refuses dates that are none and broken months. */
export const turnOver: Method = {
  id: 'turn-over',
  title: 'Date in the calendar',
  says: 'Calendar months are counted on from the day of storing; where that month has no such day, its last day is taken. Days are counted in the calendar.',
  takes: {
    year: 'ratio',
    month: 'ratio',
    day: 'ratio',
    months: 'ratio',
    now_year: 'ratio',
    now_month: 'ratio',
    now_day: 'ratio',
  },
  run: numbers => {
    const date = (mark: string): CivilDate => ({
      year: Number(numbers[`${mark}year`]),
      month: Number(numbers[`${mark}month`]),
      day: Number(numbers[`${mark}day`]),
    })
    const [stored, now, months] = [date(''), date('now_'), Number(numbers.months)]
    if (!isDate(stored) || !isDate(now)) return { ok: false, says: 'there is no such date in the calendar' }
    if (!Number.isInteger(months)) return { ok: false, says: 'the months are not a whole number' }
    const due = monthsLater(stored, months)
    const days = (from: CivilDate, to: CivilDate): number => dayCount(to) - dayCount(from)
    const values = { ...due, age: days(stored, now) * day, left: days(now, due) * day }
    return { ok: true, values, verified: `from storing until it is due there are ${days(stored, due)} days` }
  },
}
