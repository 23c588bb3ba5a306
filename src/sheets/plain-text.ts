import type { Nodes } from 'hast'

/** All text in a node, in order. */
export function toText(node: Nodes): string {
  if (node.type === 'text') return node.value
  return 'children' in node ? node.children.map(toText).join('') : ''
}
