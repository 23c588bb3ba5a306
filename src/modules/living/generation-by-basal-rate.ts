import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { each, look, step } from '../words.ts'
import { basalRate } from './carbon-dioxide-tables.ts'

/** Carbon dioxide from the basal metabolic rate by the formula of the same paper: finds a wrong cell or a wrong row. */
export const generationByBasalRate: Second = {
  title: 'Carbon dioxide from the basal metabolic rate',
  says: 'The published formula instead of the published table: 0.000484 L/s for each MJ/day of basal rate and each met, at 273 K and 101 kPa. Both are of one paper, so agreement shows that rows and cells are right, not that the paper is.',
  steps: [
    each('people', [
      look('R_b', basalRate, {
        row: 'who',
        says: 'basal metabolic rate of one person',
        unit: { SI: 'MJ/(day*person)', US: 'MJ/(day*person)' },
      }),
      step('G_b', '0.000484 * (R_b / (MJ/day/person)) * activity * count * (L/s/person)', {
        says: 'carbon dioxide of the group, at 273 K and 101 kPa',
        unit: { SI: 'L/s', US: 'L/s' },
        source: cite('persily-2017', 'G from the basal rate'),
      }),
    ]),
    step('G_second', 'sum(people.G_b)', {
      says: 'carbon dioxide of all, at 273 K and 101 kPa',
      symbol: 'G_second',
      unit: { SI: 'L/s', US: 'L/s' },
    }),
  ],
  compare: [
    {
      first: 'G_0',
      second: 'G_second',
      band: 0.07,
      says: 'the table is printed to 0.0001 L/s, up to 6 % of an infant at rest',
    },
  ],
}
