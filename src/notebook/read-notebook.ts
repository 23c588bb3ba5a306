import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { checkText } from './check-text.ts'
import { decodeText } from './decode-text.ts'
import { linesOf } from './lines.ts'
import { notebookOfTree } from './notebook-of-tree.ts'
import { parseMarkdown } from './parse-markdown.ts'
import type { Notebook } from './types.ts'
import { unreadNotebook } from './unread-notebook.ts'

/**
 * Returns a notebook as read from its text. Never throws on what an author wrote: everything wrong is in `diagnostics`,
 * in file order. A text past a limit of the reader is not read at all.
 */
export function readNotebook(text: string, { path }: { readonly path: string }): Notebook {
  const diagnostics: Diagnostic[] = []
  checkText({ lines: linesOf(text), report: diagnostic => diagnostics.push(diagnostic) })
  if (diagnostics.length > 0) return unreadNotebook({ path, text, diagnostics })
  return notebookOfTree(parseMarkdown(text), text, { path })
}

/** Returns a notebook as read from the bytes of its file. Bytes that are not UTF-8 are reported where they stand, and nothing is read. */
export function readNotebookBytes(bytes: Uint8Array, { path }: { readonly path: string }): Notebook {
  const { text, fault } = decodeText(bytes)
  return fault === undefined ? readNotebook(text, { path }) : unreadNotebook({ path, text, diagnostics: [fault] })
}
