import type { Html, Nodes, Parents } from 'mdast'
import { visit } from 'unist-util-visit'
import { type Lines, lineBounds, lineIndex } from './lines.ts'
import type { Stretch } from './mention-parts.ts'
import { nodeSpan } from './node-span.ts'
import type { Notebook } from './types.ts'

/** The comments between which a table of results stands, so that the next run finds and replaces it. */
export const resultMarks = {
  start: (block: string): string => `<!-- undercroft: results of ${block} -->`,
  end: '<!-- undercroft: end of results -->',
} as const

const start = /^<!-- undercroft: results of [a-z0-9_]+ -->$/

/**
 * The stretches that an earlier run has put in: a comment, a table, a comment, and the blank line before them. What an author has
 * written between the comments, or has taken away of them, is the author's own and stays.
 */
export function earlierResults({ tree }: Notebook, lines: Lines): Stretch[] {
  const found: Stretch[] = []
  visit(tree, 'html', (node, index, parent) => {
    if (index === undefined || !parent || !start.test(node.value)) return
    const end = endOf(parent, index)
    if (!end) return
    const from = index === 0 ? nodeSpan(node, lines).start : blankBefore(node, lines)
    found.push({ start: from, end: nodeSpan(end, lines).end })
  })
  return found
}

function endOf({ children }: Parents, index: number): Html | undefined {
  const [table, end]: (Nodes | undefined)[] = children.slice(index + 1, index + 3)
  return table?.type === 'table' && end?.type === 'html' && end.value === resultMarks.end ? end : undefined
}

/** The end of the last line before a comment that something stands before: the last that holds anything but the signs of a quote. */
function blankBefore(node: Html, lines: Lines): number {
  const own = lineIndex(lines, nodeSpan(node, lines).start)
  const before = lineBounds(lines, own - 1)
  const isBlank = own > 1 && /^[\s>]*$/.test(lines.text.slice(before.start, before.end))
  return isBlank ? lineBounds(lines, own - 2).end : before.end
}
