import type { Block, Entry, Statement, Written } from '../notebook/types.ts'
import { fullKey, inOldNames, oldKey, type Renames } from './renames.ts'

/** A block of the new notebook as the old one would have it: its own names and all that it refers to. */
export function blockInOldNames(block: Block, renames: Renames): Block {
  if (renames.blocks.size + renames.names.size === 0) return block
  const own = block.name.text
  const scope = { block: own, renames }
  const text = (written: Written): Written => ({ ...written, text: inOldNames(written.text, scope) })
  const name = (written: Written): Written => {
    const key = oldKey(renames, fullKey(written.text, own))
    return { ...written, text: key.slice(key.indexOf('.') + 1) }
  }
  const head = { ...block.name, text: oldKey(renames, own) }
  if (block.kind === 'assume')
    return { ...block, name: head, assumptions: block.assumptions.map(each => ({ ...each, name: name(each.name) })) }
  if (block.kind === 'calc')
    return {
      ...block,
      name: head,
      inputs: block.inputs.map(({ key, value }) => ({ key, value: entryIn(value, text) })),
    }
  return { ...block, name: head, statements: block.statements.map(each => statementIn(each, { text, name })) }
}

type Put = (written: Written) => Written

function entryIn(entry: Entry, text: Put): Entry {
  if (entry.kind === 'scalar') return { ...entry, written: text(entry.written) }
  if (entry.kind === 'list') return { ...entry, items: entry.items.map(item => entryIn(item, text)) }
  return { ...entry, entries: entry.entries.map(({ key, value }) => ({ key, value: entryIn(value, text) })) }
}

function statementIn(statement: Statement, { text, name }: { text: Put; name: Put }): Statement {
  switch (statement.kind) {
    case 'step':
      return { ...statement, name: name(statement.name), formula: text(statement.formula) }
    case 'check':
      return { ...statement, formula: text(statement.formula) }
    case 'table':
      return { ...statement, name: name(statement.name) }
  }
}
