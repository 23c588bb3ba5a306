import type { Code, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import { isLikeBlock } from './is-like-block.ts'
import { limits } from './limits.ts'
import { readBlock } from './read-block.ts'
import { kindOf } from './read-block-head.ts'
import { type Fence, readFence } from './read-fence.ts'
import { error, type Reading } from './reading.ts'
import { markNode } from './tree-marks.ts'
import type { Block, Written } from './types.ts'

/**
 * Returns the blocks of the notebook in the author's order, and marks their nodes. A block that has no usable name or
 * repeats one is reported, read for what else is wrong in it, and left out.
 */
export function findBlocks(tree: Root, reading: Reading): readonly Block[] {
  const blocks: Block[] = []
  const names = new Map<string, Written>()
  let found = 0
  visit(tree, 'code', node => {
    const fence = readFence(node, reading.lines)
    if (fence === undefined || found > limits.blocks) return
    if (kindOf(fence) === undefined) {
      refuseLikeBlock(fence, reading)
      return
    }
    found += 1
    if (found > limits.blocks) reportTooMany(fence, reading)
    else keep(readBlock(fence, reading), { node, fence })
  })
  return blocks

  function keep(block: Block | undefined, { node, fence }: { node: Code; fence: Fence }): void {
    if (block === undefined) return
    const first = names.get(block.name.text)
    if (first !== undefined) {
      reportRepeat(block.name, first, reading)
      return
    }
    names.set(block.name.text, block.name)
    markNode(node, { kind: 'block', index: blocks.length }, fence.asTyped)
    blocks.push(block)
  }
}

function refuseLikeBlock(fence: Fence, reading: Reading): void {
  const meant = isLikeBlock(fence)
  const [word] = fence.words
  if (meant === undefined || word === undefined) return
  const says = `\`${word.text}\` is not a kind of block, so this fence is not read`
  error(reading, 'block-kind', { place: word.place, says, help: `Write \`${meant}\`` })
}

function reportTooMany({ head }: Fence, reading: Reading): void {
  const says = `The notebook has more than ${limits.blocks} blocks, which is the limit; the rest is not read`
  error(reading, 'file-too-large', { place: head.place, says, help: 'Divide it into several notebooks' })
}

function reportRepeat({ text, place }: Written, first: Written, reading: Reading): void {
  const notes = [{ says: 'It is first used here', place: first.place }]
  const says = `Two blocks are named \`${text}\``
  error(reading, 'block-duplicate', { place, says, help: 'Give this one another name; it is not evaluated', notes })
}
