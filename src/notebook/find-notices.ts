import type { Nodes, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import { type Lines, lineBounds, lineIndex, placeOf } from './lines.ts'
import { nodeSpan } from './node-span.ts'
import { isNoticeName } from './our-directives.ts'
import { error, type Reading } from './reading.ts'
import { markNode } from './tree-marks.ts'
import type { Notice } from './types.ts'

/** Returns the boxes in the author's text, outer before inner, and marks their nodes. Refuses an empty one, and braces. */
export function findNotices(tree: Root, reading: Reading): readonly Notice[] {
  const notices: Notice[] = []
  const { lines } = reading
  visit(tree, 'containerDirective', node => {
    if (!isNoticeName(node.name)) return
    const { start } = nodeSpan(node, lines)
    const place = placeOf(lines, start, lineBounds(lines, lineIndex(lines, start)).end)
    const text = node.children
      .map(child => plainText(child, lines))
      .join(' ')
      .replaceAll(/\s+/g, ' ')
      .trim()
    if (Object.keys(node.attributes ?? {}).length > 0) {
      error(reading, 'notice-form', {
        place,
        says: 'A box takes nothing in braces',
        help: `Write \`:::${node.name}\` alone`,
      })
    }
    if (text === '') {
      const help = `Put its text between \`:::${node.name}\` and \`:::\``
      error(reading, 'notice-form', { place, says: `The ${node.name} says nothing`, help })
    }
    markNode(node, { kind: 'notice', index: notices.length })
    notices.push({ kind: node.name, text, place })
  })
  return notices
}

/** The text of a node without its marks; references of ours stay as typed, because their values are not known yet. */
function plainText(node: Nodes, lines: Lines): string {
  if (node.type === 'textDirective') {
    const { start, end } = nodeSpan(node, lines)
    return lines.text.slice(start, end)
  }
  if ('children' in node) {
    const joint = node.children.some(child => child.type === 'paragraph' || child.type === 'listItem') ? ' ' : ''
    return node.children.map(child => plainText(child, lines)).join(joint)
  }
  if (node.type === 'break') return ' '
  return 'value' in node ? node.value : ''
}
