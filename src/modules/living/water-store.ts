import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, each, label, limit, list, look, quantity, ratio, step } from '../words.ts'
import { dateInputs, dueDate } from './calendar-steps.ts'
import { leastWaterRate, waterRates } from './least-water-rate.ts'
import { days, litres, masses } from './living-units.ts'
import { stayInputs } from './stay-inputs.ts'
import { waterStoreCases } from './water-store-cases.ts'

const daily = { SI: 'L/(day*person)', US: 'gal/(day*person)' }
const rate = (says: string, symbol: string, range: { least: string; usual: readonly [string, string] }) =>
  quantity('flow_per_person', { says, symbol, unit: daily, most: '100 L/(day*person)', ...range })
const filled = dateInputs('filling', 'f')

/** Water for people and days, the vessels that hold it, and when it is renewed. */
export const waterStore = defineModule({
  id: 'water-store',
  version: '1.0.0',
  title: 'Water in store',
  asks: 'How much water must be in store, do the vessels hold it though one is lost, and when is it renewed?',
  inputs: {
    ...stayInputs,
    drinking: rate('water to drink, that in food included', 'r_d', {
      least: '2 L/(day*person)',
      usual: ['2.5 L/(day*person)', '6 L/(day*person)'],
    }),
    washing: rate('water to wash with', 'r_h', {
      least: '0 L/(day*person)',
      usual: ['0 L/(day*person)', '6 L/(day*person)'],
    }),
    cooking: rate('water to cook with', 'r_c', {
      least: '0 L/(day*person)',
      usual: ['0 L/(day*person)', '6 L/(day*person)'],
    }),
    guidance: choice({ says: 'published least rate', words: waterRates }),
    reserve: ratio({
      says: 'reserve for heat, the sick and loss, on top',
      note: 'Heat and work can double what is drunk',
      symbol: 's_w',
      unit: { SI: 'percent', US: 'percent' },
      least: '0',
      most: '2',
      usual: ['10 percent', '100 percent'],
    }),
    vessels: list('vessels that hold the water', {
      least: 1,
      most: 20,
      fields: {
        vessel: label({ says: 'which', optional: true }),
        count: ratio({ says: 'how many', symbol: 'n', least: '1', most: '5000' }),
        size: quantity('volume', {
          says: 'what one holds',
          symbol: 'V_1',
          unit: litres,
          above: '0 L',
          most: '100 m^3',
        }),
      },
    }),
    filled_year: filled.year,
    filled_month: filled.month,
    filled_day: filled.day,
    interval: ratio({
      says: 'calendar months until it is renewed',
      note: 'Self-filled vessels 6 months; bottles of the trade by their date',
      symbol: 'n_m',
      least: '1',
      most: '60',
      default: '6',
      source: cite('water-rates', 'self-filled vessels'),
    }),
  },
  steps: [
    step('r_w', 'drinking + washing + cooking', { says: 'water for each person and day', unit: daily }),
    look('r_min', leastWaterRate, { row: 'guidance', says: 'published least rate', unit: daily }),
    step('V_use', 'people * days * r_w', {
      says: 'water used over the stay',
      symbol: 'V_u',
      unit: litres,
      source: cite('mass-balance'),
    }),
    step('V_w', 'V_use * (1 + reserve)', { says: 'water to store, with the reserve', unit: litres }),
    each('vessels', [step('V_group', 'count * size', { says: 'what these hold', symbol: 'V_g', unit: litres })]),
    step('V_have', 'sum(vessels.V_group)', { says: 'what all vessels hold', symbol: 'V_h', unit: litres }),
    step('V_left', 'V_have - max(vessels.size)', {
      says: 'what is left when the largest is lost',
      symbol: 'V_l',
      unit: litres,
    }),
    step('t_water', 'V_have / (people * r_w)', { says: 'days for which the vessels last', symbol: 't_v', unit: days }),
    step('m_w', 'V_have * (0.998 kg/L)', {
      says: 'mass of the water, for the floor',
      unit: masses,
      source: cite('iapws', '20 °C'),
    }),
    dueDate(
      { year: 'filled_year', month: 'filled_month', day: 'filled_day', months: 'interval' },
      'date by which the water is renewed',
    ),
    check('drinking_enough', 'drinking >= 2.5 L/(day*person)', {
      says: 'each has the water of survival to drink',
      source: cite('water-rates', 'Sphere, 2.5 L to 3 L'),
    }),
    check('rate_enough', 'r_w >= r_min', { says: 'the rate reaches the published one' }),
    check('stored', 'V_have >= V_w', { says: 'the vessels hold the water with its reserve' }),
    check('one_lost', 'V_left >= V_use', {
      says: 'with the largest vessel lost there is water for the stay',
      source: cite('practice'),
    }),
  ],
  results: ['V_w', 'V_have', 'm_w', 't_water', 'due_year', 'due_month', 'due_day', 'r_w'],
  covers: ['water'],
  drawing: ['V_have', 'm_w'],
  schedule: { title: 'Water vessels', list: 'vessels', columns: ['vessel', 'count', 'size'] },
  limits: [
    limit('interval <= 6', {
      says: 'the water is renewed within six months',
      advice: 'Only sealed bottles of the trade keep longer, to their date',
      otherwise: 'warn',
      on: 'interval',
      source: cite('water-rates', 'self-filled vessels'),
    }),
  ],
  cautions: [
    'Vessels for food, not milk jugs; filled with disinfected water, closed, dark, apart from fuel, chemicals and waste.',
    'Nursing mothers, children, the sick and those who crank or work drink more: the reserve is for them.',
    'Have a second source, and means to treat it.',
    'Water weighs what it weighs: the mass belongs in the load of the floor, and a burst vessel runs to the sump.',
  ],
  published: waterStoreCases,
  example: {
    people: '12 person',
    days: '14 day',
    drinking: '3 L/(day*person)',
    washing: '2 L/(day*person)',
    cooking: '3 L/(day*person)',
    guidance: 'Sphere basic',
    reserve: '20 percent',
    vessels: [
      { vessel: 'tanks under the bunks', count: '6', size: '250 L' },
      { vessel: 'cans', count: '12', size: '20 L' },
    ],
    filled_year: '2026',
    filled_month: '8',
    filled_day: '31',
  },
})
