import type { Block, Notebook } from '../notebook/types.ts'
import { oldKey, type Renames } from './renames.ts'

/** A block of the new notebook with the one it was; either may be missing. */
export interface Pair {
  readonly old?: Block
  readonly now?: Block
}

export const sameKind = (a: Block, b: Block): boolean => a.kind === b.kind
export const named = (blocks: readonly Block[], name: string): Block | undefined =>
  blocks.find(each => each.name.text === name)

/** Blocks of both notebooks by their names, those of the new one as it has them. */
export function pairsOf(old: Notebook, now: Notebook, renames: Renames): Pair[] {
  const pairs: Pair[] = now.blocks.map(block => {
    const was = named(old.blocks, oldKey(renames, block.name.text))
    return was && sameKind(was, block) ? { old: was, now: block } : { now: block }
  })
  const kept = new Set(pairs.map(pair => pair.old))
  return [...pairs, ...old.blocks.filter(block => !kept.has(block)).map(block => ({ old: block }))]
}
