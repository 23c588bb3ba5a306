import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'

/** A part of the package with its heading: one sheet or several. */
export function part(id: string, title: string, content: readonly ElementContent[]): Element {
  return h('section', { id, className: ['part', id] }, [h('h2', title), ...content])
}
