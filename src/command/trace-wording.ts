import { shownWords } from '../evaluation/shown-words.ts'
import type { TraceNode } from '../evaluation/trace-types.ts'
import { wrapped } from './wrapped.ts'

/** What the words of a trace need to know. */
export interface Wording {
  /** Of the notebook, as it was named. */
  readonly path: string
  /** The short form of a source. */
  readonly short: (key: string) => string
}

const kinds: Partial<Record<TraceNode['kind'], string>> = {
  branch: 'branch',
  check: 'check',
  limit: 'limit',
  method: 'numerical method',
  agreement: 'two methods',
  table: 'table',
  text: 'in the text',
}

/** What a place is called in a sentence: `4.07 roof.M_x`. */
export const titleOf = ({ number, name, kind }: TraceNode): string =>
  [number, name || kinds[kind]].filter(Boolean).join(' ')

/** `4.07 roof.load, w = 52.3 kN/m^2`; `4.11 check: satisfied`. */
export function headOf(node: TraceNode): string {
  const { name, symbol, kind } = node
  const value = valueText(node)
  if (!name) return value ? `${titleOf(node)}: ${value}` : titleOf(node)
  const own = name.slice(name.indexOf('.') + 1)
  const sign = symbol === '' || symbol === own ? titleOf(node) : `${titleOf(node)}, ${symbol}`
  if (kind === 'table') return `${sign}, ${value}`
  return value === '' ? `${sign}: not evaluated` : `${sign} = ${value}`
}

function valueText({ value }: TraceNode): string {
  if (value === undefined || typeof value === 'string') return value ?? ''
  return shownWords(value)
}

/** What it means, its formula, its source, what else must be known, and where it stands. */
export function detailOf(node: TraceNode, { path, short }: Wording, taken = 2): string[] {
  const { kind, says, formula, reference, note, place } = node
  const pieces = [
    kind === 'text' ? `“${says}”` : says,
    formula === undefined ? '' : kind === 'check' || kind === 'branch' ? formula : `= ${formula}`,
    reference ? `[${[short(reference.key), reference.at].filter(Boolean).join(', ')}]` : '',
    note ? `(${note})` : '',
    place ? `${path}:${place.line}:${place.column}` : '',
  ]
  const blanks = ' '.repeat(taken)
  return wrapped(pieces.filter(Boolean), { first: blanks, rest: blanks }).map(line => line.slice(blanks.length))
}
