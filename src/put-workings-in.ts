import type { Root } from 'mdast'
import type { Workings } from './evaluation/workings.ts'
import { fillTree } from './notebook/fill-tree.ts'
import type { Notebook } from './notebook/types.ts'
import { answerHtml } from './typesetting/answer-html.ts'
import { settingOf } from './typesetting/setting.ts'
import { workingHtml } from './typesetting/working-html.ts'

/** Puts every block's working, every answer and every notice into the tree, formulas as elements that any pipeline can walk. */
export function putWorkingsIn(tree: Root, notebook: Notebook, workings: Workings): void {
  const setting = settingOf(workings, { medium: 'screen', parsed: true })
  const blocks = new Map(workings.blocks.map(block => [block.index, block]))
  fillTree(tree, {
    block: (index, level) => {
      const block = blocks.get(index)
      return block && workingHtml(block, Math.min(level + 1, 6), setting)
    },
    mention: index => answerHtml(workings.answers[index], setting),
    notice: index => ({ className: ['notice', notebook.notices[index]?.kind ?? 'caution'] }),
  })
}
