import type { Data, Nodes } from 'mdast'
import type { TreeMark } from './types.ts'

declare module 'mdast' {
  interface Data {
    /** What this node of the author's Markdown stands for. */
    undercroft?: TreeMark
    /** The author's own characters of this node, to be written back unchanged. */
    asTyped?: string
  }
}

/** Marks a node of the tree as one of ours. */
export function markNode(node: Nodes, mark: TreeMark, asTyped?: string): void {
  const data: Data = node.data ?? {}
  node.data = Object.assign(data, { undercroft: mark }, asTyped !== undefined && { asTyped })
}
