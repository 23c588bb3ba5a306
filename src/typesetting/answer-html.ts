import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Answer } from '../evaluation/workings.ts'
import type { Setting } from './setting.ts'
import { valueHtml } from './value-html.ts'

/** What stands in a sentence for a reference of the author's: a value, a word, a block's title, a citation. `id`: where the reference list points back to. */
export function answerHtml(answer: Answer | undefined, setting: Setting, id?: string): Element {
  switch (answer?.kind) {
    case 'value':
      return valueHtml(answer.printed.shown, answer.printed.to)
    case 'word':
      return h('a.value', { href: `#${answer.to}` }, answer.text)
    case 'see':
      return h('a', { href: `#${answer.to}` }, [answer.number, ' ', answer.title].join('').trim())
    case 'cite':
      return citeHtml(answer.key, setting, id)
    default:
      return h('strong.unknown', '[nothing has this name]')
  }
}

function citeHtml(key: string, setting: Setting, id: string | undefined): Element {
  const listed = setting.reference(key)
  return listed
    ? h('a.cite', { ...(id ? { id } : {}), href: `#reference-${listed.number}` }, `[${listed.number}]`)
    : h('strong.unknown', `[${key}]`)
}
