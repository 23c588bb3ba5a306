import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Published limits of carbon monoxide, each with the time for which it is breathed. */
export const monoxideLimits = {
  'WHO 24 h': '4 mg/m³ as a mean of a day',
  'WHO 8 h': '10 mg/m³ as a mean of 8 hours',
  'WHO 1 h': '35 mg/m³ as a mean of an hour',
  'NIOSH 10 h': '35 ppm as a mean of a shift of up to 10 hours, people at work',
  'OSHA 8 h': '50 ppm as a mean of 8 hours, people at work',
} as const

const row: Axis = { kind: 'words', says: 'limit', keys: Object.keys(monoxideLimits) }
const theirs = 'the others by those they are named after'

/** The limit by volume; those of WHO over 1.145 mg/m³ for each ppm, at 25 °C. */
export const monoxideLimit = table(
  {
    source: cite('who-air', theirs),
    row,
    title: 'Limit of carbon monoxide',
    status: 'from memory; mass turned into volume at 25 °C, 1.145 mg/m³ for each ppm',
    unit: 'ppm',
  },
  '3.49\n8.73\n30.6\n35\n50',
)

/** The time over which that limit is a mean. */
export const monoxideTime = table(
  { source: cite('osha-co', theirs), row, title: 'Time that the limit is for', status: 'from memory', unit: 'hr' },
  '24\n8\n1\n10\n8',
)
