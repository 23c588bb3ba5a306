import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, list, quantity, ratio } from '../words.ts'
import { dateInputs } from './calendar-steps.ts'
import { days } from './living-units.ts'
import { storeKinds } from './stores-rules.ts'

const now = dateInputs('the register', 'n')
const stored = dateInputs('storing or last test', 'f')

/** What `stores-register` asks for. */
export const storesRegisterInputs = {
  now_year: now.year,
  now_month: now.month,
  now_day: now.day,
  notice: quantity('time', {
    says: 'time ahead for which what falls due is called out',
    symbol: 't_q',
    unit: days,
    least: '0 day',
    most: '400 day',
    default: '30 day',
    source: cite('practice'),
  }),
  items: list('items in store', {
    least: 1,
    most: 40,
    fields: {
      item: label({ says: 'what it is' }),
      amount: label({ says: 'how much', optional: true }),
      place: label({ says: 'where it stands', optional: true }),
      kind: choice({ says: 'kind of store', words: storeKinds }),
      stored_year: stored.year,
      stored_month: stored.month,
      stored_day: stored.day,
      months: ratio({
        says: 'calendar months to its turn-over',
        note: 'Where the pack bears a date, the months up to it',
        symbol: 'n_m',
        least: '1',
        most: '360',
      }),
    },
  }),
} satisfies Readonly<Record<string, Input>>
