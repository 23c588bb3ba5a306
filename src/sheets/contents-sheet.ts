import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Placed } from './place-workings.ts'

/** More entries than this stand in two columns. */
const long = 24

/** The contents. The printer fills each `page-of` cell with the page of its target. */
export function contentsSheet(entries: readonly Placed[]): Element {
  const titles = entries.map(each => each.title)
  const twice = new Set(titles.filter((title, index) => titles.indexOf(title) !== index))
  return h('nav.part.contents', { id: 'contents', ariaLabel: 'Contents' }, [
    h('h2', 'Contents'),
    h(
      'ol',
      { className: entries.length > long ? ['long'] : [] },
      entries.map(each => entry(each, twice)),
    ),
  ])
}

/** A title that stands more than once has its block's name behind it. */
function entry({ id, level, title, number, block }: Placed, twice: ReadonlySet<string>): Element {
  const name = block && twice.has(title) ? `: ${block.name}` : ''
  return h('li', { className: [`level-${Math.min(level, 4)}`] }, [
    h('a', { href: `#${id}` }, [...(number ? [h('span.no', number)] : []), h('span.entry', title + name)]),
    h('span.leader', { ariaHidden: 'true' }),
    h('span.page-of', { dataPageOf: id }, ''),
  ])
}
