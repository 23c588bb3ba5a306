import type { Node } from './types.ts'

/** A formula's tree with its names put otherwise. */
export function withNames(node: Node, nameOf: (name: string) => string): Node {
  const of = (each: Node): Node => withNames(each, nameOf)
  switch (node.kind) {
    case 'name':
      return { ...node, name: nameOf(node.name) }
    case 'negative':
    case 'not':
      return { ...node, of: of(node.of) }
    case 'arithmetic':
    case 'comparison':
    case 'logic':
      return { ...node, left: of(node.left), right: of(node.right) }
    case 'call':
      return { ...node, args: node.args.map(of) }
    default:
      return node
  }
}
