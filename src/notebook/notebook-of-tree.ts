import type { Root } from 'mdast'
import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { sortDiagnostics } from '../diagnostic/sort-diagnostics.ts'
import { checkColons } from './check-colons.ts'
import { isTooDeep } from './check-depth.ts'
import { findBlocks } from './find-blocks.ts'
import { findMentions } from './find-mentions.ts'
import { findNotices } from './find-notices.ts'
import { keepForeignText } from './keep-foreign-text.ts'
import { linesOf } from './lines.ts'
import { readFrontMatter } from './read-front-matter.ts'
import type { Reading } from './reading.ts'
import type { Notebook } from './types.ts'
import { unreadNotebook } from './unread-notebook.ts'

/**
 * Returns the notebook of a tree that remark has parsed from `text` with `undercroftSyntax`, and marks the nodes of ours in
 * it (`data.undercroft`). `text` must be exactly what was parsed, byte order mark and all.
 */
export function notebookOfTree(tree: Root, text: string, { path }: { readonly path: string }): Notebook {
  const diagnostics: Diagnostic[] = []
  const reading: Reading = { lines: linesOf(text), report: diagnostic => diagnostics.push(diagnostic) }
  if (isTooDeep(tree, reading)) return unreadNotebook({ path, text, diagnostics })
  const title = readFrontMatter(tree, reading)
  const blocks = findBlocks(tree, reading)
  const names = new Set([...blocks.map(({ name }) => name.text), ...title.references.keys()])
  const mentions = findMentions(tree, { names, reading })
  const notices = findNotices(tree, reading)
  checkColons(tree, reading)
  keepForeignText(tree, reading)
  return { path, text, title, blocks, mentions, notices, tree, diagnostics: sortDiagnostics(diagnostics) }
}
