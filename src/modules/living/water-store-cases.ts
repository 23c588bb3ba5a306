import type { CaseInput, PublishedCase } from '../module.ts'

const store = (rates: readonly [string, string, string]): Readonly<Record<string, CaseInput>> => ({
  people: '4 person',
  days: '14 day',
  drinking: rates[0],
  washing: rates[1],
  cooking: rates[2],
  guidance: 'US household',
  reserve: '0',
  vessels: [{ count: '56', size: '1 gal' }],
  filled_year: '2026',
  filled_month: '1',
  filled_day: '15',
})
const sphere =
  'The Sphere Project, Humanitarian Charter and Minimum Standards, 2011: survival water needs, parts and total of basic needs'
const litre = (value: string): string => `${value} L/(day*person)`

/** The gallon a day, the parts of Sphere, and a date in the calendar. */
export const waterStoreCases: readonly PublishedCase[] = [
  {
    id: 'W1',
    source: 'US guidance of one gallon for each person and day, two weeks advised; four people by hand',
    status: 'looked up',
    says: 'four people for 14 days need 56 gallons, 211.98 L',
    inputs: store(['0.6 gal/(day*person)', '0.2 gal/(day*person)', '0.2 gal/(day*person)']),
    answers: { V_w: '211.98 L', V_have: '56 gal', t_water: '14 day' },
  },
  {
    id: 'W2a',
    source: sphere,
    status: 'looked up',
    says: 'the least of each part makes 7.5 L',
    inputs: store([litre('2.5'), litre('2'), litre('3')]),
    answers: { r_w: litre('7.5') },
  },
  {
    id: 'W2b',
    source: sphere,
    status: 'looked up',
    says: 'the most of each part makes 15 L',
    inputs: store([litre('3'), litre('6'), litre('6')]),
    answers: { r_w: litre('15') },
  },
  {
    id: 'W3',
    source: 'Gregorian calendar, 15 January 2026 and six months',
    status: 'computed',
    says: 'filled on 15 January 2026',
    inputs: store([litre('2.5'), litre('2'), litre('3')]),
    answers: { due_year: '2026', due_month: '7', due_day: '15' },
  },
]
