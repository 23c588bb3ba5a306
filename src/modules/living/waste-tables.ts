import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** What people eat, by which their waste differs. */
export const diets = {
  temperate: 'rich in protein, temperate climate',
  vegetarian: 'vegetarian, hot climate',
} as const

const row: Axis = { kind: 'words', says: 'diet', keys: Object.keys(diets) }
const head = { source: cite('who-sanitation', 'chapter 5'), status: 'looked up', row } as const

export const urineRate = table({ ...head, title: 'Urine of one person', unit: 'L/(day*person)' }, '1.2\n1.0')

export const faecesRate = table({ ...head, title: 'Faeces of one person', unit: 'g/(day*person)' }, '120\n400')
