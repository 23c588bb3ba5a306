import { readFormula } from '../formula/read-formula.ts'
import type { Node } from '../formula/types.ts'
import type { Entry, Statement, Written } from '../notebook/types.ts'
import { fromUnit } from '../quantity/to-unit.ts'
import type { Unit } from '../quantity/types.ts'
import { fullKey, oldKey, type Renames } from './renames.ts'

/** In whose names a text is to be understood. */
export interface Scope {
  readonly block: string
  readonly renames: Renames
}

/**
 * What a text means, as a text that is the same for every way to write it: numbers in SI to twelve figures, names in full and as the
 * old notebook has them, no unit of display. Words that are no formula stand for themselves.
 */
export function meaningOf(text: string, scope: Scope): string {
  const read = readFormula(text)
  return read.ok ? said(read.formula.tree, scope) : `"${text.trim().replaceAll(/\s+/g, ' ')}"`
}

/** The same of an input: rows in their order, the keys of a map in any. */
export function entryMeaning(entry: Entry, scope: Scope): string {
  if (entry.kind === 'scalar') return meaningOf(entry.written.text, scope)
  if (entry.kind === 'list') return `[${entry.items.map(item => entryMeaning(item, scope)).join(';')}]`
  const parts = entry.entries.map(({ key, value }) => `${key.text}:${entryMeaning(value, scope)}`)
  return `{${parts.sort().join(',')}}`
}

/** What a line of a work block says, its name and remark left aside. */
export function statementMeaning(statement: Statement, scope: Scope): string {
  if (statement.kind !== 'table') return meaningOf(statement.formula.text, scope)
  return statement.points.map(([x, y]) => `${meaningOf(x.text, scope)}, ${meaningOf(y.text, scope)}`).join('; ')
}

/** An input in one line, as its author wrote it. */
export function entryText(entry: Entry): string {
  if (entry.kind === 'scalar') return entry.written.text
  if (entry.kind === 'list') return entry.items.map(entryText).join('; ')
  return entry.entries.map(({ key, value }) => `${key.text}: ${entryText(value)}`).join(', ')
}

/** Every formula or word of an input. */
export function entryTexts(entry: Entry): readonly Written[] {
  if (entry.kind === 'scalar') return [entry.written]
  if (entry.kind === 'list') return entry.items.flatMap(entryTexts)
  return entry.entries.flatMap(({ value }) => entryTexts(value))
}

/** A number or a formula, which is worked out; not a word or a list, by which the whole block is planned. */
export function isWorkedOut(entry: Entry | undefined): boolean {
  if (entry?.kind !== 'scalar') return false
  const read = readFormula(entry.written.text)
  return read.ok && (read.formula.tree.kind !== 'name' || read.formula.tree.name.includes('.'))
}

const figures = (value: number): string => String(Number(value.toPrecision(12)))

const sized = (value: number, unit: Unit): string =>
  `${figures(fromUnit(value, unit))}[${unit.dimension.key}${unit.offset === undefined ? '' : ' on a scale'}]`

function said(node: Node, scope: Scope): string {
  const of = (each: Node): string => said(each, scope)
  switch (node.kind) {
    case 'number':
      return figures(node.value)
    case 'quantity':
      return sized(node.value, node.unit)
    case 'unit':
      return sized(1, node.unit)
    case 'name':
      return oldKey(scope.renames, fullKey(node.name, scope.block))
    case 'pi':
      return 'pi'
    case 'negative':
      return `(- ${of(node.of)})`
    case 'not':
      return `(not ${of(node.of)})`
    case 'arithmetic':
    case 'comparison':
    case 'logic':
      return `(${of(node.left)} ${node.op} ${of(node.right)})`
    case 'call':
      return `${node.fn}(${node.args.map(of).join(', ')})`
  }
}
