import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Bars by their metric size. */
export const metricBars = [
  '6 mm',
  '8 mm',
  '10 mm',
  '12 mm',
  '16 mm',
  '20 mm',
  '25 mm',
  '28 mm',
  '32 mm',
  '40 mm',
] as const

/** Bars by the US number. */
// biome-ignore format: two rows of numbers
export const usBars = [
  'No. 3', 'No. 4', 'No. 5', 'No. 6', 'No. 7', 'No. 8', 'No. 9', 'No. 10', 'No. 11', 'No. 14', 'No. 18',
] as const

/** Every bar an author may choose, and what it is. */
export const barWords: Readonly<Record<string, string>> = Object.fromEntries([
  ...metricBars.map(bar => [bar, 'metric bar']),
  ...usBars.map(bar => [bar, 'US bar']),
])

const metric: Axis = { kind: 'words', says: 'metric bar', keys: metricBars }
const us: Axis = { kind: 'words', says: 'US bar', keys: usBars }
const astm = { source: cite('astm-a615', 'Table 1'), status: 'looked up in reprints of the table' }
const nominal = { source: cite('bs-4449', 'nominal sizes'), status: 'looked up in published bar tables' }

/** Nominal diameter of metric bars, mm. */
export const metricDiameter = table(
  { ...nominal, title: 'Nominal diameter of metric bars', unit: 'mm', row: metric },
  '6 \n 8 \n 10 \n 12 \n 16 \n 20 \n 25 \n 28 \n 32 \n 40',
)

/** Nominal mass of metric bars, kg/m: 7850 kg/m^3 on the nominal area, to three decimals. */
export const metricMass = table(
  { ...nominal, title: 'Nominal mass of metric bars', unit: 'kg/m', row: metric },
  '0.222 \n 0.395 \n 0.617 \n 0.888 \n 1.579 \n 2.466 \n 3.854 \n 4.834 \n 6.313 \n 9.864',
)

/** Nominal diameter of US bars, in. */
export const usDiameter = table(
  { ...astm, title: 'Nominal diameter of US bars', unit: 'in', row: us },
  '0.375 \n 0.500 \n 0.625 \n 0.750 \n 0.875 \n 1.000 \n 1.128 \n 1.270 \n 1.410 \n 1.693 \n 2.257',
)

/** Nominal area of US bars, in^2. */
export const usArea = table(
  { ...astm, title: 'Nominal area of US bars', unit: 'in^2', row: us },
  '0.11 \n 0.20 \n 0.31 \n 0.44 \n 0.60 \n 0.79 \n 1.00 \n 1.27 \n 1.56 \n 2.25 \n 4.00',
)

/** Nominal mass of US bars, lb/ft. */
export const usMass = table(
  { ...astm, title: 'Nominal mass of US bars', unit: 'lb/ft', row: us },
  '0.376 \n 0.668 \n 1.043 \n 1.502 \n 2.044 \n 2.670 \n 3.400 \n 4.303 \n 5.313 \n 7.65 \n 13.60',
)
