import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Rule } from '../diagnostic/rules.ts'
import type { Block, Notebook } from '../notebook/types.ts'

const headRules: ReadonlySet<Rule> = new Set(['block-name', 'block-kind', 'block-duplicate'])

/**
 * Blocks that the reader could not read, or not whole, each with the fault it reported: what refers to a name of theirs
 * that nothing gives is stopped by that fault and needs no message of its own.
 */
export function lostBlocks(notebook: Notebook): ReadonlyMap<string, Diagnostic> {
  const lost = new Map<string, Diagnostic>()
  for (const fault of notebook.diagnostics)
    if (headRules.has(fault.rule)) for (const word of wordsOfHead(notebook, fault)) lost.set(word, fault)
  for (const block of notebook.blocks) {
    const fault = unreadCause(notebook, block)
    if (fault) lost.set(block.name.text, fault)
  }
  return lost
}

/** The first thing reported of a block that was not read whole. */
export function unreadCause(notebook: Notebook, block: Block): Diagnostic | undefined {
  if (!block.unread) return undefined
  const errors = notebook.diagnostics.filter(({ severity }) => severity === 'error')
  return errors.find(({ place }) => place.offset >= block.place.offset) ?? errors[0]
}

/** What may have been meant as the block's name: the words of its first line, save names that other blocks have. */
function wordsOfHead({ text, blocks }: Notebook, fault: Diagnostic): string[] {
  const { rule, place } = fault
  if (rule === 'block-duplicate') return [text.slice(place.offset, place.end)]
  const line = text.slice(place.offset - place.column + 1).match(/^[^\r\n]*/)?.[0] ?? ''
  const known = new Set(blocks.map(block => block.name.text))
  return (line.match(/[\p{L}\p{N}_]+/gu) ?? []).filter(word => !known.has(word))
}
