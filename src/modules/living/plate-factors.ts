import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

const row: Axis = {
  kind: 'numbers',
  says: 'long side over short side',
  keys: ['1.0', '1.2', '1.4', '1.6', '1.8', '2.0', '3.0', '4.0', '5.0'],
  unit: '',
  between: 'linear',
}
const head = {
  source: cite('roark', 'Table 11.4, case 1a'),
  status: 'looked up; 1.6 and 3.0 from memory, all recomputed by series',
  unit: '',
  row,
}

/** Stress at the middle of a plate held on four edges, over pressure times short side over thickness, both squared. */
export const plateStress = table(
  { ...head, title: 'Stress factor of a plate on four edges, even pressure' },
  '0.2874\n0.3762\n0.4530\n0.5172\n0.5688\n0.6102\n0.7134\n0.7410\n0.7476',
)

/** Bending of its middle, over pressure times the fourth power of the short side, Young modulus and cube of the thickness. */
export const plateBending = table(
  { ...head, title: 'Bending factor of a plate on four edges, even pressure' },
  '0.0444\n0.0616\n0.0770\n0.0906\n0.1017\n0.1110\n0.1335\n0.1400\n0.1417',
)
