import type { Element } from 'hast'
import { h } from 'hastscript'
import type { TypedValue, Workings } from '../evaluation/workings.ts'
import { prose, sentenceCase } from '../typesetting/prose.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import { shownText } from '../typesetting/value-html.ts'

/** Behind the register: what the author typed into calc and work blocks, where no row of the register gives it a basis; nothing where nothing is. */
export function typedRegister({ typed, blocks }: Workings, setting: Setting): Element[] {
  if (typed.length === 0) return []
  const rows = byPlace(typed).map(([first, ...more]) => {
    const block = blocks.find(({ name }) => name === first.block)
    return row([first, ...more], block ? settingIn(setting, block) : setting)
  })
  return [
    h('h3', { id: 'typed' }, 'Typed in blocks, without a basis in the register'),
    h('div.typed', [
      h('table.typed', [h('thead', h('tr', ['No.', 'What it is for', 'Typed'].map(th))), h('tbody', rows)]),
    ]),
  ]
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

type Together = [TypedValue, ...TypedValue[]]

/** Values of one line together. */
function byPlace(typed: readonly TypedValue[]): Together[] {
  const places: Together[] = []
  for (const value of typed) {
    const before = places.at(-1)
    if (before?.[0].id === value.id) before.push(value)
    else places.push([value])
  }
  return places
}

function row([first, ...more]: Together, setting: Setting): Element {
  const { id, number, block, says } = first
  return h('tr', [
    h('td.no', h('a', { href: `#${id}` }, number)),
    h('td.meaning', [...prose(sentenceCase(says), setting), h('span.where', ` ${block}`)]),
    h('td.values', [first, ...more].map(({ shown }) => shownText(shown)).join(', ')),
  ])
}
