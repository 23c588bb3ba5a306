import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Workings } from '../evaluation/workings.ts'
import { citedPlaces, type Sections } from './cited-places.ts'
import { part } from './part.ts'

/** Sources numbered by first citation, each with the places that cite it. What is cited nowhere is not in the list. */
export function referencesSheet({ references }: Workings, sections: Sections): Element {
  if (references.length === 0) return part('references', 'References', [h('p', 'Nothing is cited.')])
  const items = references.map(({ entry, cited }, index) =>
    h('li', { id: `reference-${index + 1}` }, [
      h('span.no', `[${index + 1}]`),
      h('span.entry', [entry, h('span.cited', [' Cited at ', ...citedPlaces(cited, sections), '.'])]),
    ]),
  )
  return part('references', 'References', [h('ol', items)])
}
