import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Workings } from '../evaluation/workings.ts'
import { anchorLinks, isUnlisted } from '../typesetting/reference-html.ts'
import { part } from './part.ts'

/** Sources numbered by first citation, each with the places that cite it; but for what is no source and is cited throughout. */
export function referencesSheet({ references }: Workings): Element {
  if (references.length === 0) return part('references', 'References', [h('p', 'Nothing is cited.')])
  const items = references.map(({ key, entry, cited }, index) =>
    h('li', { id: `reference-${index + 1}` }, [
      h('span.no', `[${index + 1}]`),
      h('span.entry', [entry, ...(isUnlisted(key) ? [] : places(cited))]),
    ]),
  )
  return part('references', 'References', [h('ol', items)])
}

function places(cited: Workings['references'][number]['cited']): ElementContent[] {
  return cited.length > 0 ? [h('span.cited', [' Cited at ', ...anchorLinks(cited), '.'])] : []
}
