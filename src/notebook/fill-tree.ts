import type { Element, ElementContent } from 'hast'
import type { Data, Node, Nodes, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type {} from './tree-marks.ts'

/** A block of ours with its working put in: remark-rehype takes the element, remark-stringify the author's own fence. */
export interface FilledBlock extends Node {
  type: 'undercroft'
  data: Data & { hName: string; hProperties: Element['properties']; hChildren: ElementContent[]; asTyped: string }
}

declare module 'mdast' {
  interface RootContentMap {
    undercroft: FilledBlock
  }
}

/** What stands in the place of each node of ours, by its index; nothing leaves the author's fence as it is. */
export interface Fillings {
  /** `level` is that of the last heading before it; 0 where there is none. */
  readonly block: (index: number, level: number) => Element | undefined
  readonly mention: (index: number) => Element | undefined
  readonly notice: (index: number) => Element['properties']
}

/** Puts workings, answers and notices into the tree, in place. */
export function fillTree(tree: Root, fillings: Fillings): void {
  let level = 0
  visit(tree, (node: Nodes, index, parent) => {
    if (node.type === 'heading') level = node.depth
    const mark = node.data?.undercroft
    if (!mark) return
    if (mark.kind === 'notice')
      node.data = Object.assign(node.data ?? {}, { hName: 'aside', hProperties: fillings.notice(mark.index) })
    const element =
      mark.kind === 'block'
        ? fillings.block(mark.index, level)
        : mark.kind === 'mention'
          ? fillings.mention(mark.index)
          : undefined
    if (!element || !parent || index === undefined) return
    const { tagName, properties, children } = element
    const data = { hName: tagName, hProperties: properties, hChildren: children, asTyped: node.data?.asTyped ?? '' }
    const filled: FilledBlock = { type: 'undercroft', data, ...(node.position ? { position: node.position } : {}) }
    parent.children.splice(index, 1, filled as never)
  })
}
