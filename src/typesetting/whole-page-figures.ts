import type { ElementContent, Nodes } from 'hast'
import { textNodes } from './small-figures.ts'

/** A tree whose running text has its small figures and narrow spaces set for the embedded face. Drawings are left as they are. */
export function setSmallFigures<T extends Nodes>(tree: T): T {
  if (!('children' in tree) || (tree.type === 'element' && tree.tagName === 'svg')) return tree
  const children = (tree.children as Nodes[]).flatMap((child): Nodes[] =>
    child.type === 'text' ? (textNodes(child.value) as ElementContent[]) : [setSmallFigures(child)],
  )
  return { ...tree, children } as T
}
