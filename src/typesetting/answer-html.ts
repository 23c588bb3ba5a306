import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Answer } from '../evaluation/workings.ts'
import type { Setting } from './setting.ts'
import { valueHtml } from './value-html.ts'

/** What stands in a sentence for a reference of the author's: a value, a word, a block's title, a citation. */
export function answerHtml(answer: Answer | undefined, setting: Setting): Element {
  switch (answer?.kind) {
    case 'value':
      return valueHtml(answer.printed.shown, answer.printed.to)
    case 'word':
      return h('a.value', { href: `#${answer.to}` }, answer.text)
    case 'see':
      return h('a', { href: `#${answer.to}` }, [answer.number, ' ', answer.title].join('').trim())
    case 'cite':
      return citeHtml(answer.key, setting)
    default:
      return h('strong.unknown', '[nothing has this name]')
  }
}

function citeHtml(key: string, setting: Setting): Element {
  const listed = setting.reference(key)
  return listed
    ? h('a.cite', { href: `#reference-${listed.number}` }, `[${listed.number}]`)
    : h('strong.unknown', `[${key}]`)
}
