import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Reference } from '../evaluation/workings.ts'
import type { Anchor } from './anchor.ts'
import { usedIn } from './marks.ts'
import type { Setting } from './setting.ts'

/** Sources that need no entry in a list: the line itself is the reason. */
const unlisted: ReadonlySet<string> = new Set(['statics', 'practice'])

/** A reference at the margin: `IS 456, D-1.1 [2]`, linked to its entry in the list. */
export function referenceHtml(reference: Reference, setting: Setting): Element {
  const listed = setting.reference(reference.key)
  const at = reference.at ? [h('span.at', reference.at)] : []
  if (!listed) return h('span.ref', [reference.key, ' ', ...at])
  const link = { href: `#reference-${listed.number}` }
  if (unlisted.has(reference.key)) return h('span.ref', [h('a', link, listed.short), at.length > 0 ? ', ' : '', ...at])
  return h('span.ref', [h('a', link, `${listed.short} [${listed.number}]`), ' ', ...at])
}

/** Links to places, parted by commas: `4.07, 4.11`. */
export function anchorLinks(anchors: readonly Anchor[]): ElementContent[] {
  return anchors.flatMap(({ id, number }, index): ElementContent[] => [
    ...(index > 0 ? [{ type: 'text' as const, value: ', ' }] : []),
    h('a', { href: `#${id}` }, number),
  ])
}

/** As many users as are named. */
export const mostUsers = 3

/** The way back from a value to the lines that use it, the first of many and how many more; nothing where none does. */
export function usersHtml(users: readonly Anchor[], most = mostUsers): Element[] {
  if (users.length === 0) return []
  const shown = users.slice(0, most)
  const more = users.length - shown.length
  const [first, ...rest] = anchorLinks(shown)
  return [
    h('span.used', [
      h('span.first', [usedIn(), '\u00a0', ...(first ? [first] : [])]),
      ...rest,
      more > 0 ? ` +${more}` : '',
    ]),
  ]
}

/** `as at 4.03`, linked: words that stand in full there. */
export function asAt({ id, number }: Anchor): ElementContent[] {
  return [{ type: 'text', value: 'as at ' }, h('a', { href: `#${id}` }, number)]
}
