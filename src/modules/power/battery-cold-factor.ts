import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Factor on the capacity of a lead-acid bank for cold, by cell temperature in degrees Fahrenheit. */
export const coldFactor = table(
  {
    title: 'Factor on lead-acid capacity for cold',
    source: cite('pv-worksheet', 'base 80 °F'),
    status: "looked up on several suppliers' worksheets, which agree",
    unit: '',
    row: {
      kind: 'numbers',
      says: 'cell temperature in degrees Fahrenheit',
      keys: ['20', '30', '40', '50', '60', '70', '80'],
      unit: '',
      between: 'linear',
    },
  },
  `
  1.59
  1.4
  1.3
  1.19
  1.11
  1.04
  1.0
  `,
)
