import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { label, list, quantity, ratio } from '../words.ts'
import { dateInputs } from './calendar-steps.ts'
import { masses } from './living-units.ts'
import { stayInputs } from './stay-inputs.ts'

const energyRate = { SI: 'kcal/(day*person)', US: 'kcal/(day*person)' }
const energyDensity = { SI: 'kcal/kg', US: 'kcal/lb' }
const packed = dateInputs('packing', 'f')

/** What `food-store` asks for. */
export const foodStoreInputs = {
  ...stayInputs,
  energy_rate: quantity('power_per_person', {
    says: 'energy of food for each person and day',
    symbol: 'e_d',
    unit: energyRate,
    least: '1200 kcal/(day*person)',
    most: '6000 kcal/(day*person)',
    usual: ['1800 kcal/(day*person)', '3500 kcal/(day*person)'],
    default: '2100 kcal/(day*person)',
    source: cite('food-planning', 'from memory'),
  }),
  reserve: ratio({
    says: 'reserve on top, for those who work and for spoilt food',
    symbol: 's_f',
    unit: { SI: 'percent', US: 'percent' },
    least: '0',
    most: '2',
  }),
  foods: list('kinds of food in store', {
    least: 1,
    most: 30,
    fields: {
      food: label({ says: 'which food', optional: true }),
      mass: quantity('mass', {
        says: 'how much, without its packing',
        symbol: 'm_k',
        unit: masses,
        above: '0 kg',
        most: '100 tonne',
      }),
      energy_density: quantity('specific_energy', {
        says: 'its energy',
        note: '4000 to 5000 kcal/kg dense rations, 3400 to 3600 dry grain and pulses, 1000 to 1500 canned meals',
        symbol: 'e_f',
        unit: energyDensity,
        least: '200 kcal/kg',
        most: '9100 kcal/kg',
        usual: ['800 kcal/kg', '6000 kcal/kg'],
      }),
      packed_year: packed.year,
      packed_month: packed.month,
      packed_day: packed.day,
      shelf: ratio({
        says: 'calendar months it keeps',
        note: 'Canned, acid 12 to 18, not acid 24 to 60; ration bars 60; the date on the pack goes before these',
        symbol: 'n_m',
        least: '1',
        most: '360',
      }),
    },
  }),
} satisfies Readonly<Record<string, Input>>
