import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** The nine panels in the order of the table. */
export const panelWords = {
  'all continuous': 'the slab runs on over all four edges (interior panel)',
  'one short edge discontinuous': 'the slab ends at one short edge',
  'one long edge discontinuous': 'the slab ends at one long edge',
  'two adjacent edges discontinuous': 'the slab ends at one short and one long edge (corner panel)',
  'two short edges discontinuous': 'the slab ends at both short edges and runs on over the long ones',
  'two long edges discontinuous': 'the slab ends at both long edges and runs on over the short ones',
  'one long edge continuous': 'the slab runs on over one long edge and ends at the other three',
  'one short edge continuous': 'the slab runs on over one short edge and ends at the other three',
  'all discontinuous': 'the slab ends at all four edges',
} as const

export type PanelWord = keyof typeof panelWords

const status = 'from memory of the standard; 30 of its entries agree with published design sheets'

const panels: Axis = {
  kind: 'words',
  says: 'edges of the panel',
  keys: Object.keys(panelWords),
  titles: ['1', '2', '3', '4', '5', '6', '7', '8', '9'],
}

const ratios: Axis = {
  kind: 'numbers',
  says: 'long span over short span',
  keys: ['1.0', '1.1', '1.2', '1.3', '1.4', '1.5', '1.75', '2.0'],
  unit: '',
  between: 'linear',
}

const source = cite('is-456', 'Annex D, Table 26')

/** Short-span coefficients at the continuous long edge; blank where no long edge is continuous. */
export const shortSupport = table(
  {
    title: 'Negative moment at continuous edge, short span coefficients',
    source,
    status,
    unit: '',
    row: panels,
    column: ratios,
  },
  `
  0.032 0.037 0.043 0.047 0.051 0.053 0.060 0.065
  0.037 0.043 0.048 0.051 0.055 0.057 0.064 0.068
  0.037 0.044 0.052 0.057 0.063 0.067 0.077 0.085
  0.047 0.053 0.060 0.065 0.071 0.075 0.084 0.091
  0.045 0.049 0.052 0.056 0.059 0.060 0.065 0.069
  -     -     -     -     -     -     -     -
  0.057 0.064 0.071 0.076 0.080 0.084 0.091 0.097
  -     -     -     -     -     -     -     -
  -     -     -     -     -     -     -     -
  `,
)

/** Short-span coefficients at midspan. */
export const shortMidspan = table(
  {
    title: 'Positive moment at midspan, short span coefficients',
    source,
    status,
    unit: '',
    row: panels,
    column: ratios,
  },
  `
  0.024 0.028 0.032 0.036 0.039 0.041 0.045 0.049
  0.028 0.032 0.036 0.039 0.041 0.044 0.048 0.052
  0.028 0.033 0.039 0.044 0.047 0.051 0.059 0.065
  0.035 0.040 0.045 0.049 0.053 0.056 0.063 0.069
  0.035 0.037 0.040 0.043 0.044 0.045 0.049 0.052
  0.035 0.043 0.051 0.057 0.063 0.068 0.080 0.088
  0.043 0.048 0.053 0.057 0.060 0.064 0.069 0.073
  0.043 0.051 0.059 0.065 0.071 0.076 0.087 0.096
  0.056 0.064 0.072 0.079 0.085 0.089 0.100 0.107
  `,
)

/** Long-span coefficients at the continuous short edge, for every ratio; blank where no short edge is continuous. */
export const longSupport = table(
  { title: 'Negative moment at continuous edge, long span coefficients', source, status, unit: '', row: panels },
  '0.032 \n 0.037 \n 0.037 \n 0.047 \n - \n 0.045 \n - \n 0.057 \n -',
)

/** Long-span coefficients at midspan, for every ratio. */
export const longMidspan = table(
  { title: 'Positive moment at midspan, long span coefficients', source, status, unit: '', row: panels },
  '0.024 \n 0.028 \n 0.028 \n 0.035 \n 0.035 \n 0.035 \n 0.043 \n 0.043 \n 0.056',
)
