import type { Nodes } from 'mdast'
import { byteOrderMark, type Lines } from './lines.ts'

/** Returns where a node of the tree begins and ends in the author's text. (The tree does not count a byte order mark.) */
export function nodeSpan(node: Nodes, lines: Lines): { readonly start: number; readonly end: number } {
  const shift = byteOrderMark(lines.text)
  const { start, end } = node.position ?? {}
  return { start: (start?.offset ?? 0) + shift, end: (end?.offset ?? 0) + shift }
}
