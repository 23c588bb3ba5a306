import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Published least rates of water for each person and day, all uses together. */
export const waterRates = {
  'US household': '1 gallon: half to drink, half for food and washing',
  'Sphere short term': '7 L: the least for a short time',
  'Sphere basic': '7.5 L: the least of all basic needs together',
} as const

export const leastWaterRate = table(
  {
    title: 'Least water for each person and day, all uses together',
    source: cite('water-rates'),
    status: 'looked up',
    unit: 'L/(day*person)',
    row: { kind: 'words', says: 'guidance', keys: Object.keys(waterRates) },
  },
  '3.785\n7\n7.5',
)
