import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, limit, step } from '../words.ts'
import { dueDate } from './calendar-steps.ts'
import { foodStoreCases } from './food-store-cases.ts'
import { foodStoreInputs } from './food-store-inputs.ts'
import { days, masses } from './living-units.ts'

const energy = { SI: 'kcal', US: 'kcal' }

/** Food for people and days by its energy, and when each kind is to be eaten. */
export const foodStore = defineModule({
  id: 'food-store',
  version: '1.0.1',
  title: 'Food in store',
  asks: 'Is there food for these people and days, what does it weigh, and by when is each kind to be eaten?',
  inputs: foodStoreInputs,
  steps: [
    step('E_use', 'people * days * energy_rate', {
      says: 'energy eaten over the stay',
      symbol: 'E_u',
      unit: energy,
      source: cite('food-planning'),
    }),
    step('E_req', 'E_use * (1 + reserve)', { says: 'energy to store, with the reserve', symbol: 'E_r', unit: energy }),
    each('foods', [
      step('E_food', 'mass * energy_density', { says: 'energy of this food', symbol: 'E_f', unit: energy }),
      dueDate(
        { year: 'packed_year', month: 'packed_month', day: 'packed_day', months: 'shelf' },
        'date by which it is to be eaten',
      ),
    ]),
    step('E_have', 'sum(foods.E_food)', { says: 'energy of all food', symbol: 'E_h', unit: energy }),
    step('m_have', 'sum(foods.mass)', { says: 'mass of all food', symbol: 'm_h', unit: masses }),
    step('t_food', 'E_have / (people * energy_rate)', { says: 'days for which it lasts', symbol: 't_f', unit: days }),
    step('m_req', 'm_have * E_req / E_have', { says: 'mass needed of the same mixture', symbol: 'm_r', unit: masses }),
    check('rate_enough', 'energy_rate >= 2100 kcal/(day*person)', {
      says: 'the energy reaches that of planning in an emergency',
      source: cite('food-planning'),
    }),
    check('stored', 'E_have >= E_req', { says: 'the food has the energy needed, with the reserve' }),
  ],
  results: ['E_req', 'E_have', 'm_have', 't_food', 'm_req'],
  covers: ['food'],
  drawing: ['m_have'],
  schedule: { title: 'Food', list: 'foods', columns: ['food', 'mass', 'due_year', 'due_month', 'due_day'] },
  limits: [
    limit('max(foods.shelf) <= 60', {
      says: 'no food is counted on for more than five years',
      advice: 'Only dry staples in packs free of oxygen keep longer',
      otherwise: 'warn',
      on: 'foods',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Energy is not a diet: of it 10 to 12 % is to be protein and about 17 % fat. Infants, the old, allergies and medicines are planned by name.',
    'Food that must be cooked or soaked draws on the stores of water and fuel, and a flame draws on the air: count on eating cold.',
    'First in, first out: what is packed first stands in front. Cans that bulge, leak or rust are thrown away.',
    'Shelf lives are common practice for a cool dry store; warmth shortens them. Keep off the floor and from rats.',
  ],
  published: foodStoreCases,
  example: {
    people: '12 person',
    days: '14 day',
    reserve: '20 percent',
    foods: [
      {
        food: 'ration bars',
        mass: '40 kg',
        energy_density: '4600 kcal/kg',
        packed_year: '2026',
        packed_month: '3',
        packed_day: '10',
        shelf: '60',
      },
      {
        food: 'canned meals',
        mass: '150 kg',
        energy_density: '1200 kcal/kg',
        packed_year: '2026',
        packed_month: '2',
        packed_day: '28',
        shelf: '36',
      },
      {
        food: 'oats and rice',
        mass: '30 kg',
        energy_density: '3500 kcal/kg',
        packed_year: '2026',
        packed_month: '5',
        packed_day: '31',
        shelf: '18',
      },
    ],
  },
})
