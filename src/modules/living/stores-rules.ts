import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** What kind of thing is in store, by which it is turned over. */
export const storeKinds = {
  'filled water': 'water in vessels filled by oneself',
  'packed food': 'food packed by oneself',
  diesel: 'diesel fuel, untreated',
  'test run': 'blower, pump, generator: the test run that is due',
  'maker date': 'medicines, batteries, filters, cans, bought water: by the date of the maker',
} as const

/** Kinds that have a longest turn-over; for the others the date of the maker alone counts. */
export const turnedOver = ['filled water', 'packed food', 'diesel', 'test run']

/** The longest turn-over of each kind, in calendar months. */
export const longestTurnOver = table(
  {
    title: 'Longest turn-over in calendar months',
    source: cite('water-rates', 'self-filled vessels'),
    status: 'water looked up, the others common practice from memory; of 6 to 12 for diesel the lower',
    unit: '',
    row: { kind: 'words', says: 'kind of store', keys: Object.keys(storeKinds) },
  },
  '6\n12\n6\n1\n-',
)
