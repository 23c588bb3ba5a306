import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** What an air intake is kept away from. */
export const separationSources = {
  'exhaust class 2': 'exhaust of a room with moderate smell or moisture, of another system',
  'exhaust class 3': 'exhaust of a crowded or closed-up room, toilets included',
  'exhaust class 4': 'exhaust of fumes or gas, as of batteries',
  'soil vent near': 'vent of drains and tanks that ends less than 1 m (3 ft) above the intake',
  'soil vent above': 'vent of drains and tanks that ends at least 1 m (3 ft) above the intake',
  flue: 'vent, chimney or flue of a stove or heater',
  'engine exhaust': 'exhaust of a generator or pump engine',
  'garage entry': 'entry of a garage, loading place for cars',
  'truck dock': 'dock or idling place of trucks',
  driveway: 'driveway, street or parking place',
  thoroughfare: 'road with much traffic',
  garbage: 'store of garbage',
} as const

const row: Axis = { kind: 'words', says: 'source', keys: Object.keys(separationSources) }
const head = {
  title: 'Least distance of an air intake from a source',
  source: cite('ashrae-62', 'Table 5.5.1, 2016'),
  status:
    'looked up in a reprint; the engine exhaust is no row of the table: twice that of a flue, as is common practice',
  row,
}

/** The metric column of the published table. */
export const separationMetric = table({ ...head, unit: 'm' }, '3\n5\n10\n3\n1\n5\n10\n5\n7.5\n1.5\n7.5\n5')

/** The column in feet: it is no conversion of the other. */
export const separationFeet = table({ ...head, unit: 'ft' }, '10\n15\n30\n10\n3\n15\n30\n15\n25\n5\n25\n15')

/** The openings out of which air of rooms comes: it is thinned too before it reaches the intake. */
export const airExhausts = ['exhaust class 3', 'exhaust class 4'] as const

export const dilutionFactor = table(
  {
    title: 'Dilution of exhaust air at an intake',
    source: cite('ashrae-62', 'normative appendix on separation'),
    status: 'from memory',
    unit: '',
    row: { kind: 'words', says: 'exhaust', keys: airExhausts },
  },
  '15\n50',
)
