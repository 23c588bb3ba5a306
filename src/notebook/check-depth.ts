import type { Nodes, Root } from 'mdast'
import { limits } from './limits.ts'
import { placeOf } from './lines.ts'
import { nodeSpan } from './node-span.ts'
import { error, type Reading } from './reading.ts'

/** Reports a tree so deep that a later stage could overflow the stack, and returns whether it is. Walks without recursion. */
export function isTooDeep(tree: Root, reading: Reading): boolean {
  let level: readonly Nodes[] = [tree]
  for (let depth = 0; level.length > 0; depth += 1) {
    const [first] = level
    if (depth > limits.treeDepth && first !== undefined) {
      const { start, end } = nodeSpan(first, reading.lines)
      const says = `The text nests more than ${limits.treeDepth} deep here, which is the limit`
      error(reading, 'file-too-large', { place: placeOf(reading.lines, start, end), says })
      return true
    }
    level = level.flatMap(node => ('children' in node ? node.children : []))
  }
  return false
}
