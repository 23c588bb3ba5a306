import type { Code, Nodes } from 'mdast'
import { visit } from 'unist-util-visit'
import { type Lines, lineBounds, lineEnding, lineIndex, linesOf } from './lines.ts'
import { nodeSpan } from './node-span.ts'
import { readFence } from './read-fence.ts'
import { earlierResults, resultMarks } from './result-marks.ts'
import type { Notebook } from './types.ts'
import { writeTable, writeWords } from './write-pieces.ts'

/** What is filled in, by the index of the block or the mention; nothing leaves the author's text as it is there. */
export interface TextFillings {
  /** Rows of a table, the heads first. */
  readonly block: (index: number) => readonly (readonly string[])[] | undefined
  readonly mention: (index: number) => string | undefined
}

interface Edit {
  readonly start: number
  readonly end: number
  readonly text: string
}

/**
 * The author's text with answers in place of mentions and a table of results under each block, between comments. Every other character is
 * the author's own, line endings and all. Tables of an earlier run are replaced, so that a text that was filled already stays as it is.
 */
export function fillText(notebook: Notebook, fillings: TextFillings): string {
  const lines = linesOf(notebook.text)
  const edits: Edit[] = earlierResults(notebook, lines).map(stretch => ({ ...stretch, text: '' }))
  const inCells = nodesInCells(notebook)
  visit(notebook.tree, (node: Nodes) => {
    const mark = node.data?.undercroft
    if (mark?.kind === 'mention') {
      const words = fillings.mention(mark.index)
      if (words !== undefined)
        edits.push({ ...nodeSpan(node, lines), text: writeWords(words, { inTable: inCells.has(node) }) })
    } else if (mark?.kind === 'block' && node.type === 'code') {
      const rows = fillings.block(mark.index)
      const name = notebook.blocks[mark.index]?.name.text ?? ''
      const edit = rows && tableUnder(node, lines, { name, rows })
      if (edit) edits.push(edit)
    }
  })
  return applied(notebook.text, edits)
}

/** What stands in cells of tables, where a bar parts cells. */
function nodesInCells({ tree }: Notebook): ReadonlySet<Nodes> {
  const nodes = new Set<Nodes>()
  visit(tree, 'tableCell', cell => visit(cell, (node: Nodes) => void nodes.add(node)))
  return nodes
}

/** A fence that is left open has no line under it. */
function tableUnder(
  node: Code,
  lines: Lines,
  { name, rows }: { readonly name: string; readonly rows: readonly (readonly string[])[] },
): Edit | undefined {
  if (!readFence(node, lines)?.closed) return undefined
  const index = lineIndex(lines, Math.max(0, nodeSpan(node, lines).end - 1))
  const { start, end } = lineBounds(lines, index)
  const before = /^(.*?)(?:`{3,}|~{3,})[ \t]*$/.exec(lines.text.slice(start, end))?.[1] ?? ''
  const put = ['', resultMarks.start(name), '', ...writeTable(rows).split('\n'), '', resultMarks.end]
  const ending = lineEnding(lines, index)
  const text = put.map(line => ending + (line === '' ? before.trimEnd() : before + line)).join('')
  return { start: end, end, text }
}

function applied(text: string, edits: readonly Edit[]): string {
  const sorted = [...edits].sort((a, b) => a.start - b.start)
  let at = 0
  let filled = ''
  for (const { start, end, text: own } of sorted) {
    filled += text.slice(at, Math.max(at, start)) + own
    at = Math.max(at, end)
  }
  return filled + text.slice(at)
}
