import type { PublishedCase } from '../module.ts'

const item = (date: readonly [string, string, string], months: string) => ({
  item: 'cans',
  kind: 'maker date',
  stored_year: date[0],
  stored_month: date[1],
  stored_day: date[2],
  months,
})

/** Dates at the ends of months, and days between dates, by the calendar. */
export const storesRegisterCases: readonly PublishedCase[] = [
  {
    id: 'SR-1',
    source: 'Gregorian calendar: 31 March 2027 and six months; from 1 April to 30 September 2027 there are 182 days',
    status: 'computed',
    says: 'the day is kept to the end of a shorter month',
    inputs: { now_year: '2027', now_month: '4', now_day: '1', items: [item(['2027', '3', '31'], '6')] },
    answers: { due_year_1: '2027', due_month_1: '9', due_day_1: '30', t_left_1: '182 day', t_age_1: '1 day' },
  },
  {
    id: 'SR-2',
    source: 'Gregorian calendar: 29 February 2024 and twelve months; from 1 March 2024 there are 364 days to it',
    status: 'computed',
    says: 'from a leap day to the next year',
    inputs: { now_year: '2024', now_month: '3', now_day: '1', items: [item(['2024', '2', '29'], '12')] },
    answers: { due_year_1: '2025', due_month_1: '2', due_day_1: '28', t_left_1: '364 day' },
  },
  {
    id: 'SR-3',
    source: 'J. Meeus, Astronomical Algorithms, chapter 7: 10 000 days after 11 July 1991 it is 26 November 2018',
    status: 'memory',
    says: 'days in store over seven leap days',
    inputs: { now_year: '2018', now_month: '11', now_day: '26', items: [item(['1991', '7', '11'], '360')] },
    answers: { t_age_1: '10000 day' },
  },
]
