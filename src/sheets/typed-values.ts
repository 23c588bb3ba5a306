import type { Element } from 'hast'
import { h } from 'hastscript'
import type { TypedValue, Workings } from '../evaluation/workings.ts'
import { prose, sentenceCase } from '../typesetting/prose.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import { shownText } from '../typesetting/value-html.ts'
import { grouped } from './grouped.ts'

/** Behind the register: what the author typed into calc and work blocks, where no row of the register gives it a basis; nothing where nothing is. */
export function typedRegister({ typed, blocks }: Workings, setting: Setting): Element[] {
  if (typed.length === 0) return []
  const bodies = [...grouped(typed, ({ block }) => block)].map(([name, values]) => {
    const block = blocks.find(each => each.name === name)
    const rows = [...grouped(values, ({ id }) => id).values()]
    const head = h('tr.group', h('th', { scope: 'rowgroup', colSpan: 3 }, [`${block?.number ?? ''} ${name}`.trim()]))
    return h('tbody', [head, ...rows.map(some => row(some, block ? settingIn(setting, block) : setting))])
  })
  return [
    h('h3', { id: 'typed' }, 'Typed in blocks, without a basis in the register'),
    h('div.typed', [h('table.typed', [h('thead', h('tr', ['No.', 'What it is for', 'Typed'].map(th))), ...bodies])]),
  ]
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

/** Values of one line together. */
function row(some: readonly TypedValue[], setting: Setting): Element {
  const [first] = some
  return h('tr', [
    h('td.no', first ? h('a', { href: `#${first.id}` }, first.number) : []),
    h('td.meaning', first ? prose(sentenceCase(first.says), setting) : []),
    h('td.values', some.map(({ shown }) => shownText(shown)).join(', ')),
  ])
}
