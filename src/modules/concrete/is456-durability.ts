import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Exposures of Table 3, in its order. */
export const exposureWords = {
  mild: 'protected from weather and harm, away from the coast',
  moderate:
    'buried in harmless soil or ground water, always under water, condensation and rain, or sheltered at the coast',
  severe: 'wetting and drying, heavy rain or condensation, some frost while wet, the open coast, or sunk in sea water',
  'very severe': 'aggressive soil or ground water, sea spray, corrosive fumes, or hard frost while wet',
  extreme: 'tidal zone, or touched by aggressive chemicals',
} as const

const exposures: Axis = { kind: 'words', says: 'exposure', keys: Object.keys(exposureWords) }
const status = 'from memory of the standard'
const ofTable5 = (title: string, unit: string, cells: string) =>
  table({ title, source: cite('is-456', 'Table 5'), status, unit, row: exposures }, cells)

/** Nominal cover to all steel, mm; the reductions of its notes are not in it. */
export const nominalCover = table(
  { title: 'Nominal cover for durability', source: cite('is-456', 'Table 16'), status, unit: 'mm', row: exposures },
  '20 \n 30 \n 45 \n 50 \n 75',
)

/** Least grade of reinforced concrete, MPa of cubes. */
export const leastGrade = ofTable5('Least grade of reinforced concrete', 'MPa', '20 \n 25 \n 30 \n 35 \n 40')

/** Least cement of reinforced concrete with aggregate of 20 mm, kg/m3. */
export const leastCement = ofTable5(
  'Least cement of reinforced concrete, aggregate of 20 mm',
  'kg/m^3',
  '300 \n 300 \n 320 \n 340 \n 360',
)

/** Greatest free water over cement. */
export const mostWater = ofTable5('Greatest free water-cement ratio', '', '0.55 \n 0.50 \n 0.45 \n 0.45 \n 0.40')

/** Sizes of aggregate that Table 6 has. */
export const aggregateWords = {
  '10 mm': 'more cement: the grains have more surface',
  '20 mm': 'the size of Table 5',
  '40 mm': 'less cement',
} as const

/** What another size of aggregate adds to the least cement, kg/m3. */
export const cementForAggregate = table(
  {
    title: 'Adjustment of the least cement for the size of the aggregate',
    source: cite('is-456', 'Table 6'),
    status,
    unit: 'kg/m^3',
    row: { kind: 'words', says: 'nominal size of the aggregate', keys: Object.keys(aggregateWords) },
  },
  '40 \n 0 \n -30',
)
