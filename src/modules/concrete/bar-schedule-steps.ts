import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { leastEnd, leastRadius, type ShapeWord } from './bar-shapes.ts'
import { size } from './bar-steps.ts'

const bs = (at: string) => cite('bs-8666', at)

interface Shape {
  readonly shape: ShapeWord
  readonly length: string
  /** Legs at an end of the bar, and those between bends or round them. */
  readonly ends?: readonly string[]
  readonly between?: readonly string[]
}

/** Lengths of Table 3; the radius is called `r` there, the diameter `d`. */
const bent: readonly Shape[] = [
  { shape: 'shape 11', length: 'a + b - 0.5 * r - bar_size', ends: ['a', 'b'] },
  { shape: 'shape 13', length: 'a + 0.57 * b + c - 1.6 * bar_size', ends: ['a', 'c'], between: ['b'] },
  { shape: 'shape 21', length: 'a + b + c - r - 2 * bar_size', ends: ['a', 'c'], between: ['b'] },
  { shape: 'shape 23', length: 'a + b + c - r - 2 * bar_size', ends: ['a', 'c'], between: ['b'] },
  { shape: 'shape 26', length: 'a + b + c', ends: ['a', 'c'], between: ['b'] },
  { shape: 'shape 41', length: 'a + b + c + d + e - 2 * r - 4 * bar_size', ends: ['a', 'e'], between: ['b', 'c', 'd'] },
  { shape: 'shape 47', length: '2 * a + b + max(21 * bar_size, 240 mm)', between: ['a', 'b'] },
  { shape: 'shape 51', length: '2 * a + 2 * b + max(16 * bar_size, 160 mm)', between: ['a', 'b'] },
  { shape: 'shape 63', length: '2 * a + 3 * b + max(14 * bar_size, 150 mm)', between: ['a', 'b'] },
  { shape: 'shape 75', length: 'pi * (a - bar_size) + b', between: ['a'] },
]

const least = (names: readonly string[]): string => (names.length === 1 ? `${names[0]}` : `min(${names.join(', ')})`)
const cut = (formula: string): Step =>
  step('L_cut', formula, { says: 'length along the bar', symbol: 'L', unit: size, source: bs('Table 3') })

const stepsOf = ({ length, ends = [], between = [] }: Shape): readonly Step[] => [
  cut(length),
  ...(ends.length > 0
    ? [
        look('P_e', leastEnd, { row: 'bar_size', says: 'least end projection', unit: size }),
        check('ends', `${least(ends)} >= P_e`, {
          says: 'legs at the ends of the bar',
          aspect: 'geometry' as const,
          source: bs('Table 2'),
        }),
      ]
    : []),
  ...(between.length > 0
    ? [
        step('b_room', '2 * (r + bar_size)', {
          says: 'room that two bends take',
          unit: size,
          source: cite('statics', 'two bends side by side'),
        }),
        check('legs', `${least(between)} >= b_room`, {
          says: 'room for the bends between',
          aspect: 'geometry' as const,
          source: cite('statics', 'two bends side by side'),
        }),
      ]
    : []),
]

/** One word after the other: the steps of the shape that was chosen. */
const chosen = bent.reduceRight<readonly Step[]>(
  (no, shape) => [when({ choice: 'shape', is: [shape.shape] }, { yes: stepsOf(shape), no })],
  [],
)

/** Cut length and mass of the bars of one mark. */
export const barScheduleSteps: readonly Step[] = [
  when(
    { choice: 'shape', is: ['shape 00'] },
    {
      yes: [cut('a')],
      no: [look('r', leastRadius, { row: 'bar_size', says: 'least radius', symbol: 'r_least', unit: size }), ...chosen],
    },
  ),
  step('L_c', 'ceil(L_cut / (25 mm)) * (25 mm)', {
    says: 'length to cut, rounded up to 25 mm',
    unit: size,
    source: bs('rounding of lengths, from memory'),
  }),
  step('m_n', 'count * L_c * pi / 4 * bar_size^2 * (7850 kg/m^3)', {
    says: 'mass of the bars of this mark',
    unit: { SI: 'kg', US: 'lb' },
    source: cite('bs-4449', 'nominal mass'),
  }),
]
