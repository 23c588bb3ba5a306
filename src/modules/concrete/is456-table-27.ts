import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

const status = 'to a ratio of 2.0 looked up in a reprint of the same figures; 2.5 and 3.0 from memory'

const ratios: Axis = {
  kind: 'numbers',
  says: 'long span over short span',
  keys: ['1.0', '1.1', '1.2', '1.3', '1.4', '1.5', '1.75', '2.0', '2.5', '3.0'],
  unit: '',
  between: 'linear',
}

const source = cite('is-456', 'Annex D, Table 27')

/** Short-span coefficients of a slab simply supported on four sides with corners free to lift. */
export const liftingShort = table(
  { title: 'Corners free to lift, short span coefficients', source, status, unit: '', row: ratios },
  '0.062 \n 0.074 \n 0.084 \n 0.093 \n 0.099 \n 0.104 \n 0.113 \n 0.118 \n 0.122 \n 0.124',
)

/** Long-span coefficients of the same slab. */
export const liftingLong = table(
  { title: 'Corners free to lift, long span coefficients', source, status, unit: '', row: ratios },
  '0.062 \n 0.061 \n 0.059 \n 0.055 \n 0.051 \n 0.046 \n 0.037 \n 0.029 \n 0.020 \n 0.014',
)
