import { inSymbols, isOne } from '../evaluation/in-symbols.ts'
import type { Line, Substitution } from '../evaluation/workings.ts'

/**
 * Everything that is printed of a line, as a text to compare: not its number and anchors, which follow what stands before it, and not
 * its place in the file. Names stand as their symbols, as in print.
 */
export function lineText(line: Line): string {
  const { id: _id, number: _number, place: _place, ...all } = line
  // A check of the author's is called by its place in the block, which is not printed.
  const said = { ...all, ...(all.kind === 'check' ? { name: '' } : {}), row: rowText(all) }
  return JSON.stringify(said, (key, value: unknown) => (key === 'to' || key === 'id' ? undefined : plain(value)))
}

/** The row as it stands over its lines: how many rows there are is not printed. */
const rowText = ({ row }: Pick<Line, 'row'>): string => (row ? `${row.index} ${row.label}` : '')

/** What the line comes to: its value, verdict or choice, with the unit; nothing of how it got there. */
export function outcomeText(line: Line): string {
  switch (line.kind) {
    case 'formula':
    case 'look':
      return `${line.result.digits} ${line.result.unit.text}`
    case 'branch':
      return `${line.holds} ${line.because ?? ''}`
    case 'check':
      return [line.verdict, line.demand?.digits, line.capacity?.digits, line.ratio?.shown.digits].join(' ')
    case 'solve':
      return line.gives.map(({ printed: { shown } }) => `${shown.digits} ${shown.unit.text}`).join('; ')
  }
}

function plain(value: unknown): unknown {
  if (isSubstitution(value)) return substitution(value)
  if (isUnit(value)) return value.text
  return value
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null
const isSubstitution = (value: unknown): value is Substitution => isObject(value) && 'operands' in value
const isUnit = (value: unknown): value is { readonly text: string } =>
  isObject(value) && 'parts' in value && 'factor' in value

function substitution(working: Substitution) {
  const values = [...working.operands.values()].flatMap(found => (isOne(found) ? [found] : [...found]))
  return {
    ...inSymbols(working),
    values: values.map(({ shown }) => `${shown.digits} ${shown.unit.text}${shown.exact ? ' exact' : ''}`),
    bare: working.bare,
  }
}
