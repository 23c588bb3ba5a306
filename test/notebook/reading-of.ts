import type { Diagnostic, Place } from '../../src/diagnostic/diagnostic.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import type { Block, Notebook } from '../../src/notebook/types.ts'

export const head = '---\ntitle: Example\n---\n\n'

/** A notebook with a title block and this text after it. */
export const bodyOf = (body: string): Notebook => readNotebook(head + body, { path: 'example.md' })

/** A notebook with these lines in its title block. */
export const titleOf = (lines: string): Notebook =>
  readNotebook(`---\ntitle: Example\n${lines}\n---\n`, { path: 'example.md' })

/** What a fence of these words and lines is read as, with what was said of it. */
export function fenceOf(words: string, lines: string): { notebook: Notebook; block: Block | undefined } {
  const notebook = bodyOf(`\`\`\`${words}\n${lines}\n\`\`\`\n`)
  return { notebook, block: notebook.blocks[0] }
}

export const textAt = ({ text }: Notebook, place: Place): string => text.slice(place.offset, place.end)

/** Each diagnostic as `rule: text under the carets`. */
export const marked = (notebook: Notebook): readonly string[] =>
  notebook.diagnostics.map(({ rule, place }) => `${rule}: ${textAt(notebook, place)}`)

/** The one diagnostic of a notebook; fails where there is not exactly one. */
export function onlyFault(notebook: Notebook): Diagnostic {
  const [fault, second] = notebook.diagnostics
  if (fault === undefined || second !== undefined) {
    throw new Error(`expected one diagnostic, got ${JSON.stringify(notebook.diagnostics, null, 1)}`)
  }
  return fault
}
