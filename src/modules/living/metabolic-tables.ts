import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** What people do, by which their heat differs. */
export const activities = {
  'seated at rest': '115 W in all',
  'office work': '140 W in all',
  standing: '150 W in all',
  eating: '160 W in all, the meal included',
  'light work': '235 W in all',
  dancing: '265 W in all',
} as const

const row: Axis = { kind: 'words', says: 'activity', keys: Object.keys(activities) }
const column: Axis = {
  kind: 'numbers',
  says: 'temperature in °C',
  keys: ['20', '22', '24', '26'],
  unit: '',
  between: 'linear',
}
const head = { source: cite('jones', 'Table 7.16'), status: 'looked up', unit: 'W/person', row, column }

/** Heat that warms the air, of one person by activity and room temperature. */
export const sensibleHeat = table(
  { ...head, title: 'Sensible heat of one person' },
  '90 80 75 65\n100 90 80 70\n105 95 82 72\n110 100 85 75\n130 115 100 80\n140 125 105 90',
)

/** Heat that leaves as moisture, of one person by activity and room temperature. */
export const latentHeat = table(
  { ...head, title: 'Latent heat of one person' },
  '25 35 40 50\n40 50 60 70\n45 55 68 78\n50 60 75 85\n105 120 135 155\n125 140 160 175',
)
