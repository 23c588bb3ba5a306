import type { PublishedCase } from '../module.ts'

const hand = '6 people, 30 days and 2100 kcal by hand; 3500 kcal in a kilogram'

const food = (mass: string, energy_density: string) => ({
  mass,
  energy_density,
  packed_year: '2027',
  packed_month: '3',
  packed_day: '31',
  shelf: '6',
})

/** Energy and mass by hand, and a date in the calendar. */
export const foodStoreCases: readonly PublishedCase[] = [
  {
    id: 'F1',
    source: `Planning energy of Sphere and the UN agencies, 2100 kcal (from memory): ${hand}`,
    status: 'computed',
    says: 'six people for 30 days need 378 000 kcal, 108.0 kg',
    inputs: {
      people: '6 person',
      days: '30 day',
      reserve: '0',
      foods: [food('108 kg', '3500 kcal/kg')],
    },
    answers: {
      E_use: '378000 kcal',
      E_have: '378000 kcal',
      m_req: '108.0 kg',
      due_year_1: '2027',
      due_month_1: '9',
      due_day_1: '30',
    },
  },
  {
    id: 'F2',
    source: 'The Sphere Project, Humanitarian Charter and Minimum Standards, 2011: 2100 kcal for each person and day',
    status: 'memory',
    says: 'energy taken where none is given, one person for one day',
    inputs: { people: '1 person', days: '1 day', reserve: '0', foods: [food('1 kg', '2100 kcal/kg')] },
    answers: { E_use: '2100 kcal', t_food: '1 day' },
  },
]
