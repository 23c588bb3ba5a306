import type { CaseInput, PublishedCase } from '../module.ts'

const stay = (people: string, diet: string): Readonly<Record<string, CaseInput>> => ({
  people,
  days: '7 day',
  diet,
  flush: '0 L/(day*person)',
  tank: '200 L',
  emptied_every: '7 day',
  toilets: '1',
  washing: '0 L/(day*person)',
  grey_tank: '0 L',
  bins: '100 L',
})

/** Volumes from published daily figures, and the published number of toilets. */
export const wasteStoreCases: readonly PublishedCase[] = [
  {
    id: 'S1',
    source:
      'World Health Organization, On-site Sanitation, 1992, chapter 5: 1.2 L and 120 g a day; 70 person-days by hand',
    status: 'computed',
    says: 'ten people for a week',
    inputs: stay('10 person', 'temperate'),
    answers: { V_e: '92.4 L' },
  },
  {
    id: 'S1b',
    source:
      'World Health Organization, On-site Sanitation, 1992, chapter 5: 1.0 L and 400 g a day; 70 person-days by hand',
    status: 'computed',
    says: 'ten people for a week on a vegetarian diet',
    inputs: stay('10 person', 'vegetarian'),
    answers: { V_e: '98.0 L' },
  },
  {
    id: 'S2',
    source: 'The Sphere Project: at most 20 people to a toilet; refuse container of 100 L for 50 people',
    status: 'looked up',
    says: 'toilets and refuse containers for 25 people',
    inputs: stay('25 person', 'temperate'),
    answers: { n_wc: '2', V_bins: '50 L' },
  },
]
