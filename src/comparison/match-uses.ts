import type { Block, Notebook, Written } from '../notebook/types.ts'
import { statementTexts, usesOf } from './edit.ts'
import { entryTexts, meaningOf } from './meaning.ts'
import { oldKey, type Renames } from './renames.ts'

/** Written so in place of a name whose uses are compared. */
const here = '@'

/**
 * Where and how a value is used, as a text that is the same in both notebooks for a value that only got another name; empty where nothing
 * uses it. `renames` are those of its notebook.
 */
export function usesText(notebook: Notebook, key: string, renames: Renames): string {
  const blanked: Renames = { ...renames, names: new Map(renames.names).set(key, here) }
  const found = notebook.blocks.flatMap(block => {
    const name = block.name.text
    return textsOf(block).flatMap(({ at, written }) =>
      usesOf([written], name).includes(key)
        ? [`${oldKey(renames, name)} ${at}: ${meaningOf(written.text, { block: name, renames: blanked })}`]
        : [],
    )
  })
  return found.sort().join('\n')
}

function textsOf(block: Block): readonly { readonly at: string; readonly written: Written }[] {
  if (block.kind === 'assume') return []
  if (block.kind === 'calc')
    return block.inputs.flatMap(({ key, value }) => entryTexts(value).map(written => ({ at: key.text, written })))
  return block.statements.flatMap(statement =>
    statementTexts(statement).map(written => ({ at: statement.kind, written })),
  )
}
