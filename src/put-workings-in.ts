import type { Element } from 'hast'
import type { Root } from 'mdast'
import { visit } from 'unist-util-visit'
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
      return block && standingAlone(workingHtml(block, Math.min(level + 1, 6), setting))
    },
    mention: index => standingAlone(answerHtml(workings.answers[index], setting)),
    notice: index => ({ className: ['notice', notebook.notices[index]?.kind ?? 'caution'] }),
  })
}

const ofThePackage = /^#(?:register|reference)-/

/** The page has no register and no list of references, as a package has: what would link to them is left as words. */
function standingAlone(element: Element): Element {
  visit(element, 'element', node => {
    const { href, ...properties } = node.properties
    if (typeof href === 'string' && ofThePackage.test(href)) Object.assign(node, { tagName: 'span', properties })
  })
  return element
}
