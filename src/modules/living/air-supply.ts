import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, each, label, limit, list, look, pressure, quantity, ratio, step, when } from '../words.ts'
import { airSupplyCases } from './air-supply-cases.ts'
import { drawAirSupply } from './air-supply-sketch.ts'
import { breathers, carbonDioxideGeneration } from './carbon-dioxide-tables.ts'
import { generationByBasalRate } from './generation-by-basal-rate.ts'
import { leastRate, leastRates } from './least-air-rate.ts'

const flow = { SI: 'L/s', US: 'cfm' }
const percent = { SI: 'percent', US: 'percent' }

/** Fresh air for the people in a shelter, and the carbon dioxide at which the room settles. */
export const airSupply = defineModule({
  id: 'air-supply',
  version: '1.0.0',
  title: 'Fresh air and steady carbon dioxide',
  asks: 'How much fresh air do these people need, and at what carbon dioxide does the room settle?',
  inputs: {
    people: list('groups of people of like age and activity', {
      least: 1,
      most: 40,
      fields: {
        group: label({ says: 'who they are', optional: true }),
        count: quantity('persons', {
          says: 'how many',
          symbol: 'N_p',
          unit: { SI: 'person', US: 'person' },
          least: '1 person',
          most: '5000 person',
        }),
        who: choice({ says: 'sex and age', words: breathers }),
        activity: ratio({
          says: 'activity in met',
          note: '1.0 lying, 1.2 sitting at rest, 1.6 light work, 3 and more cranking a blower',
          symbol: 'M_a',
          least: '1',
          most: '4',
          usual: ['1', '2'],
        }),
      },
    }),
    supply: quantity('flow', {
      says: 'fresh air that the blower brings with dusty filters',
      symbol: 'Q_s',
      unit: flow,
      above: '0 L/s',
    }),
    minimum_rate: choice({ says: 'published least rate of fresh air for each person', words: leastRates }),
    co2_limit: ratio({
      says: 'carbon dioxide not to be exceeded for long, by volume',
      symbol: 'c_lim',
      unit: percent,
      above: '0',
      most: '3 percent',
      usual: ['0.1 percent', '1 percent'],
      source: cite('niosh-co2', '15 min limit 3 %'),
    }),
    outdoor_co2: ratio({
      says: 'carbon dioxide outdoors',
      symbol: 'c_out',
      unit: percent,
      least: '0.02 percent',
      most: '0.5 percent',
      usual: ['0.03 percent', '0.06 percent'],
      default: '0.04 percent',
      source: cite('practice'),
    }),
    room_temperature: quantity('temperature', {
      says: 'air temperature in the room',
      symbol: 'theta_r',
      unit: { SI: 'degC', US: 'degF' },
      least: '-10 degC',
      most: '50 degC',
      usual: ['5 degC', '35 degC'],
      default: '20 degC',
      source: cite('practice'),
    }),
    room_pressure: pressure({
      says: 'air pressure at the site',
      symbol: 'p_r',
      unit: { SI: 'kPa', US: 'kPa' },
      least: '50 kPa',
      most: '120 kPa',
      default: '101 kPa',
      source: cite('practice'),
    }),
    volume: quantity('volume', {
      says: 'free air volume of the room',
      symbol: 'V_a',
      unit: { SI: 'm^3', US: 'ft^3' },
      above: '0 m^3',
      optional: true,
    }),
  },
  steps: [
    each('people', [
      look('G_p', carbonDioxideGeneration, {
        row: 'who',
        column: 'activity',
        says: 'carbon dioxide of one person, at 273 K and 101 kPa',
        unit: { SI: 'L/(s*person)', US: 'L/(s*person)' },
      }),
      step('G_group', 'count * G_p', {
        says: 'carbon dioxide of the group, at 273 K and 101 kPa',
        symbol: 'G_g',
        unit: { SI: 'L/s', US: 'L/s' },
      }),
    ]),
    step('N_all', 'sum(people.count)', { says: 'people in all', unit: { SI: 'person', US: 'person' } }),
    step('G_0', 'sum(people.G_group)', {
      says: 'carbon dioxide of all, at 273 K and 101 kPa',
      unit: { SI: 'L/s', US: 'L/s' },
    }),
    step('T_r', '(room_temperature / degC + 273.15) * K', {
      says: 'absolute temperature in the room',
      unit: { SI: 'K', US: 'K' },
    }),
    step('k_v', 'T_r / (273 K) * (101 kPa) / room_pressure', {
      says: 'expansion from 273 K and 101 kPa to the air of the room',
      source: cite('persily-2017', 'G with T / P'),
    }),
    step('G', 'k_v * G_0', { says: 'carbon dioxide of all, at room conditions', unit: flow }),
    ...leastRate,
    step('Q_min', 'N_all * q_min', { says: 'fresh air by the least rate', unit: flow }),
    step('Q_co2', 'G / (co2_limit - outdoor_co2)', {
      says: 'fresh air that holds the carbon dioxide at its limit',
      unit: flow,
      source: cite('mass-balance'),
    }),
    step('Q_req', 'max(Q_min, Q_co2)', { says: 'fresh air needed', unit: flow }),
    step('q_s', 'supply / N_all', {
      says: 'fresh air for each person as supplied',
      unit: { SI: 'L/(s*person)', US: 'cfm/person' },
    }),
    step('c_s', 'outdoor_co2 + G / supply', {
      says: 'carbon dioxide at which the room settles',
      unit: percent,
      source: cite('mass-balance'),
    }),
    check('least_rate', 'supply >= Q_min', { says: 'the supply keeps the published least rate' }),
    check('carbon_dioxide', 'c_s <= co2_limit', { says: 'the carbon dioxide settles within its limit' }),
    when(
      { given: 'volume' },
      {
        yes: [
          step('V_p', 'volume / N_all', {
            says: 'free volume for each person',
            unit: { SI: 'm^3/person', US: 'ft^3/person' },
          }),
          step('V_p_min', '65 ft^3/person', {
            says: 'least net volume for each person',
            unit: { SI: 'm^3/person', US: 'ft^3/person' },
            source: cite('fema-453', '1.7'),
          }),
          step('n_ach', 'supply / volume', { says: 'air changes', unit: { SI: 'ACH', US: 'ACH' } }),
          check('volume_each', 'V_p >= V_p_min', {
            says: 'each person has the least net volume',
            source: cite('fema-453', '1.7'),
          }),
        ],
      },
    ),
  ],
  results: ['Q_req', 'Q_min', 'Q_co2', 'c_s', 'G', 'N_all', 'q_s'],
  covers: ['air'],
  limits: [
    limit('co2_limit > outdoor_co2', {
      says: 'the limit of carbon dioxide is above the share outdoors',
      advice: 'No flow of air can hold it lower',
      otherwise: 'refuse',
      on: 'co2_limit',
      source: cite('mass-balance'),
    }),
    limit('co2_limit <= 0.5 percent', {
      says: 'carbon dioxide is held to 0.5 %, the limit for a working day',
      otherwise: 'warn',
      on: 'co2_limit',
      source: cite('osha-co2'),
    }),
  ],
  cautions: [
    'In a warm climate heat, not carbon dioxide, sets the rate, at several times these figures: see the heat balance of the room.',
    'Fans, filters and people fail: fit a carbon dioxide alarm and a carbon monoxide alarm, and a way to crank the blower by hand.',
    'The sick and the hard-working breathe out more than the table says for rest. People who crank a blower belong in a group of their own.',
    'These rates are for breathing and heat, never against smoke or gas outside: then close up.',
    'Nothing may burn in the room: a stove or engine is in no line of this working.',
    {
      says: 'The filtered and unfiltered rates of the Swiss directives are from memory: check them against the directive.',
      when: { choice: 'minimum_rate', is: ['Swiss filtered', 'Swiss unfiltered'] },
    },
  ],
  second: generationByBasalRate,
  sketch: drawAirSupply,
  published: airSupplyCases,
  example: {
    people: [
      { group: 'men', count: '4 person', who: 'male 30 to under 40', activity: '1.2' },
      { group: 'women', count: '4 person', who: 'female 30 to under 40', activity: '1.2' },
      { group: 'children', count: '4 person', who: 'female 6 to under 11', activity: '1.4' },
    ],
    supply: '30 L/s',
    minimum_rate: 'ASHRAE 1981',
    co2_limit: '0.25 percent',
    volume: '90 m^3',
  },
})
