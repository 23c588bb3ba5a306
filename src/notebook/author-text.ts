import type { Element, ElementContent, Root as HastRoot } from 'hast'
import type { Nodes, Root } from 'mdast'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import type {} from './tree-marks.ts'

type State = { all: (node: Nodes) => ElementContent[] }

/**
 * The author's text as hast, each node of ours an empty element that says what stands there: `data-undercroft-block`,
 * `-mention` or `-notice` with its index. HTML that the author typed is left out: a package runs no foreign markup.
 */
export function authorText(tree: Root): HastRoot {
  const handlers = {
    code: handlerFor('code'),
    textDirective: handlerFor('textDirective'),
    containerDirective: handlerFor('containerDirective'),
  }
  return unified().use(remarkRehype, { handlers, clobberPrefix: 'note-' }).runSync(tree) as HastRoot
}

function handlerFor(kind: 'code' | 'textDirective' | 'containerDirective') {
  return (state: State, node: Nodes): ElementContent | undefined => {
    const mark = node.data?.undercroft
    if (mark?.kind === 'block') return element('div', { dataUndercroftBlock: mark.index })
    if (mark?.kind === 'mention') return element('span', { dataUndercroftMention: mark.index })
    if (mark?.kind === 'notice') return element('aside', { dataUndercroftNotice: mark.index }, state.all(node))
    if (kind !== 'code' || node.type !== 'code')
      return element(kind === 'textDirective' ? 'span' : 'div', {}, state.all(node))
    const language = node.lang ? { className: [`language-${node.lang}`] } : {}
    return element('pre', {}, [element('code', language, [{ type: 'text', value: `${node.value}\n` }])])
  }
}

const element = (tagName: string, properties: Element['properties'], children: ElementContent[] = []): Element => ({
  type: 'element',
  tagName,
  properties,
  children,
})
