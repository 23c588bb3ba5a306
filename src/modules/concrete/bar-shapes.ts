import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Shapes of BS 8666 that a small box needs, with the dimensions that each takes. */
export const shapeWords = {
  'shape 00': 'straight: A',
  'shape 11': 'one square bend: A, B',
  'shape 13': 'hairpin with a round end: legs A and C, B across it, outside',
  'shape 21': 'two square bends, the legs on one side: A, B, C',
  'shape 23': 'two square bends, the legs on either side: A, B, C',
  'shape 26': 'cranked: A, B along the slope, C',
  'shape 41': 'four square bends, a chair or hat: A, B, C, D, E',
  'shape 47': 'open link with hooked ends: legs A, B between them',
  'shape 51': 'closed link: A, B',
  'shape 63': 'double closed link: A, B',
  'shape 75': 'ring: A across it, outside, and lap B',
} as const

export type ShapeWord = keyof typeof shapeWords

/** Shapes that take a dimension beyond A. */
export const shapesWith = (letter: 'B' | 'C' | 'D' | 'E'): readonly ShapeWord[] =>
  (Object.keys(shapeWords) as ShapeWord[]).filter(word => new RegExp(`\\b${letter}\\b`).test(shapeWords[word]))

const bars: Axis = {
  kind: 'numbers',
  says: 'diameter of the bar',
  keys: ['8', '10', '12', '16', '20', '25', '32', '40'],
  unit: 'mm',
  between: 'none',
}
const from = { source: cite('bs-8666', 'Table 2'), status: 'looked up in reprints of the table', unit: 'mm', row: bars }

/** Least radius for scheduling, mm: two diameters to 16 mm, three and a half above. */
export const leastRadius = table(
  { ...from, title: 'Least radius for scheduling' },
  '16 \n 20 \n 24 \n 32 \n 70 \n 87 \n 112 \n 140',
)

/** Least length of a leg at the end of a bar, outside the bend included, mm. */
export const leastEnd = table(
  { ...from, title: 'Least end projection of a bent bar' },
  '115 \n 120 \n 125 \n 130 \n 190 \n 240 \n 305 \n 380',
)
