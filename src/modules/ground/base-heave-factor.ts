import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Bearing capacity factor of a square pit by its depth over its width; from 4 on it stays. */
export const heaveFactor = table(
  {
    title: 'Factor of a square pit in clay, Bjerrum and Eide',
    source: cite('bjerrum-eide'),
    status: 'from memory of a table read off the chart by B. M. Das; compare with the chart',
    unit: '',
    row: {
      kind: 'numbers',
      says: 'depth of the pit over its width',
      keys: ['0', '1', '2', '3', '4'],
      unit: '',
      between: 'linear',
    },
  },
  `
  6.3
  7.8
  8.4
  8.8
  9.0
  `,
)
