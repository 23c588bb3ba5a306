import type { Element } from 'hast'
import { h } from 'hastscript'
import type { LimitLine } from '../evaluation/workings.ts'
import { cross, tick } from './marks.ts'
import { prose, sentenceCase } from './prose.ts'
import { referenceHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'

/** The limits of validity, each shown as kept or exceeded for these inputs. */
export function limitsHtml(limits: readonly LimitLine[], setting: Setting): Element[] {
  if (limits.length === 0) return []
  return [
    h('table.limits', [
      h('caption', 'Limits of the method'),
      h('thead', h('tr', [th('Limit'), th('Here'), th('Source')])),
      h(
        'tbody',
        limits.map(limit => limitRow(limit, setting)),
      ),
    ]),
  ]
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

function limitRow({ says, kept, reference }: LimitLine, setting: Setting): Element {
  const state = kept ? h('span.verdict', [tick(), 'kept']) : h('span.verdict.fails', [cross(), h('b', 'exceeded')])
  return h('tr', [
    h('td', prose(sentenceCase(says))),
    h('td', state),
    h('td.source', reference ? [referenceHtml(reference, setting)] : []),
  ])
}

/** What an engineer must keep in mind with this method. */
export function cautionsHtml(cautions: readonly string[]): Element[] {
  if (cautions.length === 0) return []
  return [
    h('div.cautions', [
      h('p.label', 'Cautions'),
      h(
        'ul',
        cautions.map(one => h('li', prose(one))),
      ),
    ]),
  ]
}
