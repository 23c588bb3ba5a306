import type { Node, Span } from './types.ts'

/** The names in a tree, in order of first use, without repeats. */
export const namesOf = (tree: Node): readonly string[] => [...nameSpans(tree).keys()]

/** The same, each with the place of its first use. */
export function nameSpans(tree: Node): ReadonlyMap<string, Span> {
  const names = new Map<string, Span>()
  collect(tree, names)
  return names
}

function collect(node: Node, names: Map<string, Span>): void {
  if (node.kind === 'name' && !names.has(node.name)) names.set(node.name, node.span)
  for (const child of childrenOf(node)) collect(child, names)
}

/** The nodes directly below a node, in the order of the text. */
export function childrenOf(node: Node): readonly Node[] {
  switch (node.kind) {
    case 'negative':
    case 'not':
      return [node.of]
    case 'arithmetic':
    case 'comparison':
    case 'logic':
      return [node.left, node.right]
    case 'call':
      return node.args
    default:
      return []
  }
}
