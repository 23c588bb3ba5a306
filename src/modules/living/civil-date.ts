/** A date of the Gregorian calendar, without a time zone. */
export interface CivilDate {
  readonly year: number
  readonly month: number
  readonly day: number
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0

/** Days of a month. */
export const monthLength = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31

/** Whether there is such a date. */
export const isDate = ({ year, month, day }: CivilDate): boolean =>
  [year, month, day].every(Number.isInteger) && month >= 1 && month <= 12 && day >= 1 && day <= monthLength(year, month)

/** The same day so many calendar months later, or the last day of a month that is shorter. Months are whole. */
export function monthsLater({ year, month, day }: CivilDate, months: number): CivilDate {
  const count = 12 * year + (month - 1) + months
  const then = { year: Math.floor(count / 12), month: count - 12 * Math.floor(count / 12) + 1 }
  return { ...then, day: Math.min(day, monthLength(then.year, then.month)) }
}

/** Days from 1 January of year 1 to a date; a difference of two is the days between them. */
export function dayCount({ year, month, day }: CivilDate): number {
  const before = year - 1
  let days = 365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400)
  for (let each = 1; each < month; each += 1) days += monthLength(year, each)
  return days + day - 1
}
