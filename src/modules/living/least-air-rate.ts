import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { step, when } from '../words.ts'

/** Published least rates of fresh air, by where they come from. */
export const leastRates = {
  'US survival': '3 cfm for each person: minimum survival rate of US fallout shelters',
  'ASHRAE 1981': '5 cfm for each person: sedentary people, holds carbon dioxide at 0.25 %',
  Belgian: '`6 m^3/hr` for each person: closed shelter, with or without the main filter',
  'Swiss filtered': '`3 m^3/hr` for each person through the gas filter (from memory)',
  'Swiss unfiltered': '`6 m^3/hr` for each person past the gas filter (from memory)',
} as const

type Source = keyof typeof leastRates

const rate = (formula: string, source: Citation): Step =>
  step('q_min', formula, {
    says: 'least rate of fresh air for each person',
    unit: { SI: 'L/(s*person)', US: 'cfm/person' },
    source,
  })

const rates: Readonly<Record<Source, Step>> = {
  'US survival': rate('3 cfm/person', cite('ad-621998', 'abstract')),
  'ASHRAE 1981': rate('5 cfm/person', cite('fema-453', '1.7, quoting ASHRAE 62-1981')),
  Belgian: rate('6 m^3/(hr*person)', cite('belgian-shelters')),
  'Swiss filtered': rate('3 m^3/(hr*person)', cite('swiss-twp')),
  'Swiss unfiltered': rate('6 m^3/(hr*person)', cite('swiss-twp')),
}

const chosen = (source: Source, otherwise: Step): Step =>
  when({ choice: 'minimum_rate', is: [source] }, { yes: [rates[source]], no: [otherwise] })

/** `q_min`, the chosen least rate for each person. Its sources are cited at each rate. */
export const leastRate: readonly Step[] = [
  chosen('US survival', chosen('ASHRAE 1981', chosen('Belgian', chosen('Swiss filtered', rates['Swiss unfiltered'])))),
]
