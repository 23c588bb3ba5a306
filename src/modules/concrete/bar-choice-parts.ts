import type { Input, Limit, Step } from '../module.ts'
import type { Citation } from '../sources.ts'
import { check, length, quantity, step } from '../words.ts'
import { barInput, barSteps, size, steelPerWidth } from './bar-steps.ts'
import { sectionLimits } from './section-limits.ts'

/** What every code asks of a row of bars; the members differ by code. */
export const barChoiceInputs = {
  required_area: quantity('area_per_length', {
    says: 'steel needed for strength and crack width, per width',
    note: 'At one face and in one direction; 0 where only the least steel of the code counts',
    symbol: 'a_req',
    unit: steelPerWidth,
    least: '0 mm^2/m',
    usual: ['0 mm^2/m', '8000 mm^2/m'],
  }),
  bar_size: barInput,
  spacing: length({
    says: 'spacing of the bars, centre to centre',
    symbol: 's',
    unit: size,
    above: '0 mm',
    usual: ['75 mm', '450 mm'],
  }),
  cover: length({
    says: 'clear cover to these bars',
    note: 'Where other bars lie between them and the face, those are in it',
    symbol: 'c',
    unit: size,
    least: '0 mm',
    usual: ['20 mm', '100 mm'],
  }),
  aggregate: length({
    says: 'largest nominal size of the aggregate',
    symbol: 'd_a',
    unit: size,
    above: '0 mm',
    usual: ['10 mm', '40 mm'],
  }),
} satisfies Readonly<Record<string, Input>>

/** Overall depth, by the symbol of the code. */
export const depthOf = (symbol: 'D' | 'h'): Input =>
  length({ says: 'overall depth of the slab or wall', symbol, unit: size, above: '0 mm', usual: ['100 mm', '1.5 m'] })

interface Rules {
  /** Steps that give `A_min`, per width and face. */
  readonly least: readonly Step[]
  /** Steps that give `s_most`. */
  readonly most: readonly Step[]
  readonly area: Citation
  readonly clear: { readonly formula: string; readonly source: Citation }
}

/** Bar, least steel, steel provided, and the distances between bars; `s_use` is the widest spacing that keeps all. */
export const barChoiceSteps = ({ least, most, area, clear }: Rules): readonly Step[] => [
  ...barSteps,
  step('d', 'thickness - cover - phi / 2', { says: 'effective depth', unit: size }),
  ...least,
  step('A_need', 'max(required_area, A_min)', { says: 'steel needed', symbol: 'a_need', unit: steelPerWidth }),
  step('A_s', 'A_phi / spacing', { says: 'steel provided', symbol: 'a_s', unit: steelPerWidth }),
  check('area', 'A_s >= A_need', { says: 'steel provided against steel needed', source: area }),
  ...most,
  step('s_use', 'min(A_phi / A_need, s_most)', { says: 'widest spacing of these bars that keeps both', unit: size }),
  step('s_clear', clear.formula, {
    says: 'least clear distance between bars',
    unit: size,
    source: clear.source,
  }),
  check('spacing_clear', 'spacing - phi >= s_clear', {
    says: 'clear distance between the bars',
    aspect: 'geometry',
    source: clear.source,
  }),
]

export const mostSpacing = (formula: string, source: Citation): Step =>
  step('s_most', formula, { says: 'largest spacing', unit: size, source })

export const checkMost = (source: Citation): Step =>
  check('spacing_most', 'spacing <= s_most', { says: 'spacing of the bars', source })

export const barChoiceLimits: readonly Limit[] = sectionLimits('phi')

export const barChoiceCautions = [
  'One face and one direction. The other face and the other direction have bars and least steel of their own.',
  'A row for a wall takes two layers alike, one at each face: the least steel of the wall is halved between them. A wall with a single layer is another case.',
  'Least steel does not make concrete watertight: restraint and early cooling often ask for more in a wall cast on a raft.',
  'A wall that bends under soil and water is also a slab: choose the slab words for the bars that carry the bending, and keep both.',
]

export const barChoiceResults = ['A_s', 'A_need', 'A_min', 's_use', 's_most', 's_clear', 'd'] as const
