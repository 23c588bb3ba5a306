import type { Root } from 'mdast'
import { visit } from 'unist-util-visit'
import { nodeSpan } from './node-span.ts'
import type { Reading } from './reading.ts'

const likeDirective = /:[\p{L}\p{N}][\p{L}\p{N}_-]*[[{]/u

/**
 * Marks text that looks like somebody else's directive, `a:b[c]{d}`, to be written back as typed: remark-stringify would
 * escape its brackets.
 */
export function keepForeignText(tree: Root, { lines }: Reading): void {
  visit(tree, 'text', node => {
    const { start, end } = nodeSpan(node, lines)
    if (!likeDirective.test(node.value) || lines.text.slice(start, end) !== node.value) return
    node.data = Object.assign(node.data ?? {}, { asTyped: node.value })
  })
}
