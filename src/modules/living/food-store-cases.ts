import type { PublishedCase } from '../module.ts'

const hand = '6 people, 30 days and 2100 kcal by hand; 3500 kcal in a kilogram'

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
      foods: [
        {
          mass: '108 kg',
          energy_density: '3500 kcal/kg',
          packed_year: '2027',
          packed_month: '3',
          packed_day: '31',
          shelf: '6',
        },
      ],
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
]
