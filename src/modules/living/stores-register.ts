import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, limit, look, solve, step, when } from '../words.ts'
import { days } from './living-units.ts'
import { storesRegisterCases } from './stores-register-cases.ts'
import { storesRegisterInputs } from './stores-register-inputs.ts'
import { drawStoresRegister } from './stores-register-sketch.ts'
import { longestTurnOver, turnedOver } from './stores-rules.ts'
import { turnOver } from './turn-over.ts'

const whole = { dimension: 'ratio', whole: true } as const

/** What is in store, when it is due and what is overdue. */
export const storesRegister = defineModule({
  id: 'stores-register',
  version: '1.1.0',
  title: 'Register of stores',
  asks: 'What is in store, when is each item due, and is anything overdue?',
  inputs: storesRegisterInputs,
  steps: [
    each('items', [
      when(
        { choice: 'kind', is: turnedOver },
        {
          yes: [
            look('n_most', longestTurnOver, {
              row: 'kind',
              says: 'longest turn-over of its kind, in months',
              symbol: 'n_x',
            }),
            check('often_enough', 'months <= n_most', { says: 'it is turned over as often as its kind needs' }),
          ],
        },
      ),
      solve(turnOver, {
        takes: {
          year: 'stored_year',
          month: 'stored_month',
          day: 'stored_day',
          months: 'months',
          now_year: 'now_year',
          now_month: 'now_month',
          now_day: 'now_day',
        },
        gives: {
          year: { ...whole, name: 'due_year', says: 'year', symbol: 'y_u' },
          month: { ...whole, name: 'due_month', says: 'month', symbol: 'm_u' },
          day: { ...whole, name: 'due_day', says: 'day', symbol: 'd_u' },
          age: { dimension: 'time', name: 't_age', says: 'time it has been in store', symbol: 't_g', unit: days },
          left: {
            dimension: 'time',
            name: 't_left',
            says: 'time it has still; negative: overdue',
            symbol: 't_l',
            unit: days,
          },
        },
        says: 'date on which it is due',
        source: cite('practice', 'turn-over by the calendar'),
      }),
    ]),
    step('t_next', 'min(items.t_left)', { says: 'time until the first item is due', symbol: 't_n', unit: days }),
    check('none_overdue', 't_next >= 0 day', { says: 'no item is overdue' }),
  ],
  results: ['t_next'],
  covers: ['turnover'],
  schedule: {
    title: 'Register of stores',
    list: 'items',
    columns: ['item', 'amount', 'place', 'due_year', 'due_month', 'due_day', 't_left'],
  },
  limits: [
    limit('min(items.t_age) >= 0 day', {
      says: 'nothing was stored after the day of the register',
      otherwise: 'refuse',
      on: 'items',
      source: cite('practice'),
    }),
    limit('t_next >= notice', {
      says: 'nothing falls due within the time of notice',
      advice: 'The calendar shows what is due first',
      otherwise: 'warn',
      on: 'items',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'The register is as true as its last round: count and look, do not copy it from the year before.',
    'First in, first out: what was stored first is used first, and the new stands behind.',
    'Months of common practice are for a cool dry store. A date of the maker goes before them, and what smells, leaks or bulges goes at once.',
    'Blower, pump and generator are run on their day, by hand as well, and that day is written here.',
  ],
  sketch: drawStoresRegister,
  published: storesRegisterCases,
  example: {
    now_year: '2026',
    now_month: '11',
    now_day: '2',
    items: [
      {
        item: 'water tanks',
        amount: '1500 L',
        place: 'under bunks',
        kind: 'filled water',
        stored_year: '2026',
        stored_month: '8',
        stored_day: '31',
        months: '6',
      },
      {
        item: 'ration bars',
        amount: '40 kg',
        place: 'shelf A',
        kind: 'maker date',
        stored_year: '2025',
        stored_month: '3',
        stored_day: '10',
        months: '60',
      },
      {
        item: 'oats and rice',
        amount: '30 kg',
        place: 'shelf B',
        kind: 'packed food',
        stored_year: '2026',
        stored_month: '5',
        stored_day: '31',
        months: '12',
      },
      {
        item: 'diesel',
        amount: '200 L',
        place: 'outside tank',
        kind: 'diesel',
        stored_year: '2026',
        stored_month: '9',
        stored_day: '14',
        months: '6',
      },
      {
        item: 'gas filter',
        amount: '2',
        place: 'plant room',
        kind: 'maker date',
        stored_year: '2022',
        stored_month: '2',
        stored_day: '28',
        months: '120',
      },
    ],
  },
})
