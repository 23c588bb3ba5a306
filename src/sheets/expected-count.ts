import type { Element, Nodes } from 'hast'
import type { PencilCount } from './package-model.ts'

/**
 * What the pencil proof of these workings comes to where every line closes, from the marks of the steps alone. Nothing is proved by it: it
 * lets the printing begin while the proof is being made.
 */
export function expectedCount(node: Nodes): PencilCount {
  if (!('children' in node)) return noCount
  const { dataLine, dataKind } = node.type === 'element' ? node.properties : {}
  if (dataLine === undefined) return node.children.map(expectedCount).reduce(addedCounts, noCount)
  if (dataKind === 'solve') return { ...noCount, notPencil: 1 }
  const lines = equationsIn(node) + (dataKind === 'look' ? 1 : 0)
  return { lines, closing: lines, notPencil: 0 }
}

export const noCount: PencilCount = { lines: 0, closing: 0, notPencil: 0 }

export const addedCounts = (a: PencilCount, b: PencilCount): PencilCount => ({
  lines: a.lines + b.lines,
  closing: a.closing + b.closing,
  notPencil: a.notPencil + b.notPencil,
})

function equationsIn(node: Nodes): number {
  if (node.type === 'element' && isEquation(node)) return 1
  return 'children' in node ? node.children.reduce((sum, child) => sum + equationsIn(child), 0) : 0
}

const isEquation = ({ properties: { className } }: Element): boolean =>
  Array.isArray(className) && className.includes('equation')
