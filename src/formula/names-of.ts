import type { Node } from './types.ts'

/** The names in a tree, in order of first use, without repeats. */
export function namesOf(tree: Node): readonly string[] {
  const names = new Set<string>()
  collect(tree, names)
  return [...names]
}

function collect(node: Node, names: Set<string>): void {
  if (node.kind === 'name') names.add(node.name)
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
