import type { Root, Text } from 'mdast'
import { SKIP, visit } from 'unist-util-visit'
import { checkNearMention } from './check-near-mention.ts'
import { nodeSpan } from './node-span.ts'
import { isMentionName } from './our-directives.ts'
import { readMention } from './read-mention.ts'
import type { Reading } from './reading.ts'
import { markNode } from './tree-marks.ts'
import type { Mention } from './types.ts'

interface Known {
  /** Names of blocks and keys of references: by them a slip of the pen is told from somebody else's text. */
  readonly names: ReadonlySet<string>
  readonly reading: Reading
}

/**
 * Returns the references in the author's sentences, in order, and marks their nodes. One that cannot be read is reported and
 * stays in the tree as text.
 */
export function findMentions(tree: Root, { names, reading }: Known): readonly Mention[] {
  const mentions: Mention[] = []
  const { lines } = reading
  visit(tree, (node, index, parent) => {
    if (node.type === 'text') checkNearMention(nodeSpan(node, lines), { names, reading })
    if (node.type !== 'textDirective' || !isMentionName(node.name)) return undefined
    const span = nodeSpan(node, lines)
    const asTyped = lines.text.slice(span.start, span.end)
    const mention = readMention(span, reading)
    if (mention !== undefined) {
      markNode(node, { kind: 'mention', index: mentions.length }, asTyped)
      mentions.push(mention)
    } else if (parent !== undefined && index !== undefined) {
      const text: Text = {
        type: 'text',
        value: asTyped,
        data: { asTyped },
        ...(node.position && { position: node.position }),
      }
      parent.children.splice(index, 1, text)
    }
    return SKIP
  })
  return mentions
}
