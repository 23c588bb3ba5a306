import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, limit, look, quantity, ratio, step } from '../words.ts'
import { days, litres } from './living-units.ts'
import { stayInputs } from './stay-inputs.ts'
import { wasteStoreCases } from './waste-store-cases.ts'
import { diets, faecesRate, urineRate } from './waste-tables.ts'

const daily = { SI: 'L/(day*person)', US: 'gal/(day*person)' }
const vessel = (says: string, symbol: string) =>
  quantity('volume', { says, symbol, unit: litres, least: '0 L', most: '1000 m^3' })

/** Toilets, the tank under them, waste water and refuse over a stay. */
export const wasteStore = defineModule({
  id: 'waste-store',
  version: '1.0.0',
  title: 'Toilets, waste water and refuse',
  asks: 'Do toilets, tank and containers take what these people leave, and how often must the tank be emptied?',
  inputs: {
    ...stayInputs,
    diet: choice({ says: 'what people eat', words: diets }),
    flush: quantity('flow_per_person', {
      says: 'what is added in the tank: flushing, cover, paper, cleaning',
      note: 'A dry toilet with sawdust or earth 0.2 to 0.5 L; a pan that is flushed 10 L and more',
      symbol: 'r_a',
      unit: daily,
      least: '0 L/(day*person)',
      most: '100 L/(day*person)',
    }),
    tank: vessel('what the toilet tank or the buckets hold, in use', 'V_k'),
    emptied_every: quantity('time', {
      says: 'how often they can be emptied while people stay',
      note: 'The days of the stay where they cannot',
      symbol: 't_e',
      unit: days,
      above: '0 day',
      most: '400 day',
    }),
    toilets: ratio({ says: 'number of toilets', symbol: 'n_t', least: '0', most: '500' }),
    washing: quantity('flow_per_person', {
      says: 'water used to wash and cook',
      symbol: 'r_k',
      unit: daily,
      least: '0 L/(day*person)',
      most: '100 L/(day*person)',
    }),
    share: ratio({
      says: 'share of it that becomes waste water',
      symbol: 'k_g',
      least: '0.5',
      most: '1',
      usual: ['0.8', '1'],
      default: '1',
      source: cite('practice'),
    }),
    grey_tank: vessel('what the tank or sump for waste water takes over the stay', 'V_q'),
    bins: vessel('what the containers for refuse hold', 'V_b'),
  },
  steps: [
    look('u_p', urineRate, { row: 'diet', says: 'urine of one person', unit: daily }),
    look('f_p', faecesRate, {
      row: 'diet',
      says: 'faeces of one person',
      unit: { SI: 'kg/(day*person)', US: 'lb/(day*person)' },
    }),
    step('r_e', 'u_p + f_p / (1 kg/L) + flush', { says: 'into the tank from each person and day', unit: daily }),
    step('V_e', 'people * days * r_e', {
      says: 'into the tank over the stay',
      unit: litres,
      source: cite('mass-balance'),
    }),
    step('t_tank', 'tank / (people * r_e)', { says: 'time in which the tank fills', symbol: 't_k', unit: days }),
    step('V_grey', 'people * days * washing * share', {
      says: 'waste water over the stay',
      symbol: 'V_n',
      unit: litres,
    }),
    step('n_wc', 'ceil(people / (20 person))', {
      says: 'toilets needed, one for 20 people',
      symbol: 'n_w',
      source: cite('sphere-sanitation', 'at most 20 people to a toilet'),
    }),
    step('V_bins', 'people * (2 L/person)', {
      says: 'containers for refuse, 100 L for 50 people',
      symbol: 'V_r',
      unit: litres,
      source: cite('sphere-sanitation', 'as compared by UNHCR'),
    }),
    check('toilets_enough', 'toilets >= n_wc', { says: 'there are toilets enough' }),
    check('tank_holds', 't_tank >= min(emptied_every, days)', { says: 'the tank lasts until it can be emptied' }),
    check('grey_holds', 'grey_tank >= V_grey', { says: 'the waste water of the stay has its place' }),
    check('bins_hold', 'bins >= V_bins', { says: 'the containers for refuse reach the published size' }),
  ],
  results: ['V_e', 't_tank', 'n_wc', 'V_grey', 'V_bins'],
  covers: ['waste'],
  drawing: ['toilets', 'tank', 'grey_tank', 'bins'],
  schedule: { title: 'Sanitation', lines: ['toilets', 'tank', 'grey_tank', 'bins'] },
  limits: [
    limit('r_e <= 5 L/(day*person)', {
      says: 'little water goes into the tank, as from a dry toilet',
      advice: 'A flushed toilet needs a drain, and its water in store',
      otherwise: 'warn',
      on: 'flush',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Toilets and tanks are vented to the open, on the exhaust side, and stand apart from water, food and the air intake: sealed tanks make gas.',
    'The sick leave more, and infect: keep disinfectant, gloves, bags and a separate bucket.',
    'The size of refuse containers is for camps, where they are emptied; closed up, packs of food and water fill more. Keep a space for bags.',
    'Emptying in the open under fallout costs dose: count on the whole stay where that may be.',
  ],
  published: wasteStoreCases,
  example: {
    people: '12 person',
    days: '14 day',
    diet: 'temperate',
    flush: '0.3 L/(day*person)',
    tank: '300 L',
    emptied_every: '14 day',
    toilets: '1',
    washing: '5 L/(day*person)',
    grey_tank: '900 L',
    bins: '120 L',
  },
})
