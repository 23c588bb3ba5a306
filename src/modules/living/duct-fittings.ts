import { cite } from '../sources.ts'
import { table } from '../table.ts'

export const entranceWords = {
  none: 'joined to what comes before',
  'sharp-edged': 'flush with a wall',
  rounded: 'rounded by a fifth of the bore or more',
  projecting: 'standing out into the air',
  hood: 'a weather hood',
} as const

export const bendWords = {
  smooth: 'smooth bend of 90 degrees, flanged or welded',
  segmented: 'round segmented elbow of 90 degrees',
  threaded: 'threaded elbow of 90 degrees',
  mitre: 'mitre of 90 degrees without vanes',
  'mitre with vanes': 'mitre of 90 degrees with vanes',
  'threaded 45': 'threaded elbow of 45 degrees',
} as const

export const outletWords = { none: 'joined to what comes after', open: 'into a room or the open' } as const

const head = { source: cite('cengel-fluid', 'Table 8-4'), unit: '' } as const
const words = (says: string, keys: Readonly<Record<string, string>>) =>
  ({ kind: 'words', says, keys: Object.keys(keys) }) as const

/** Loss coefficient at the beginning of a duct, on its own velocity pressure. */
export const entranceLoss = table(
  {
    ...head,
    title: 'Loss coefficient of an entrance',
    status: 'sharp-edged and hood looked up, the others from memory; projecting is the upper value of 0.78 to 1.0',
    row: words('entrance', entranceWords),
  },
  '0\n0.5\n0.03\n1.0\n1.3',
)

/** Loss coefficient of one bend. */
export const bendLoss = table(
  {
    ...head,
    title: 'Loss coefficient of a bend',
    status: 'segmented looked up in Example 14-1, the others from memory',
    row: words('bend', bendWords),
  },
  '0.3\n0.21\n0.9\n1.1\n0.2\n0.4',
)

/** Loss coefficient where a duct ends: the whole velocity pressure is lost. */
export const outletLoss = table(
  { ...head, title: 'Loss coefficient of an outlet', status: 'looked up', row: words('outlet', outletWords) },
  '0\n1.0',
)
