import type { Block } from '../notebook/types.ts'
import type { blockEdits } from './block-edits.ts'
import { blockInOldNames } from './block-in-old-names.ts'
import type { Restated } from './change-types.ts'
import type { Edit } from './edit.ts'
import type { matchBlocks } from './match-blocks.ts'
import { layoutDifferences, paragraphDifferences } from './prose-differences.ts'
import type { Renames } from './renames.ts'
import type { Evaluation } from './types.ts'

/** False for a block that refers to something by its new name. */
const isAsWritten = (block: Block, renames: Renames): boolean =>
  JSON.stringify({ ...blockInOldNames(block, renames), name: block.name }) === JSON.stringify(block)

/** What is written otherwise and means the same. */
export function restatedOf(
  notebooks: { readonly old: Evaluation['notebook']; readonly now: Evaluation['notebook'] },
  about: {
    readonly blocks: ReturnType<typeof blockEdits>
    readonly matched: ReturnType<typeof matchBlocks>
    readonly edits: readonly Edit[]
  },
): Restated {
  const { blocks, matched, edits } = about
  const touched = new Set([...edits.map(({ change }) => change.key), ...blocks.written].map(key => key.split('.')[0]))
  const pairs = matched.pairs.flatMap(({ old, now }) =>
    old && now && !touched.has(now.name.text) && isAsWritten(now, matched.renames)
      ? [{ old: old.name.text, now: now.name.text }]
      : [],
  )
  return {
    written: blocks.written,
    order: blocks.order,
    layout: layoutDifferences(pairs, notebooks),
    paragraphs: paragraphDifferences(notebooks.old, notebooks.now),
  }
}
