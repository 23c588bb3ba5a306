import type { Element } from 'hast'
import { h } from 'hastscript'
import type { CalcWorking, LimitLine } from '../evaluation/workings.ts'
import { cross, tick } from './marks.ts'
import { prose } from './prose.ts'
import { asAt, referenceHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'

/** The limits of validity, the second method's last, each shown as kept or exceeded for these inputs. */
export function limitsHtml(limits: readonly LimitLine[], setting: Setting): Element[] {
  if (limits.length === 0) return []
  return [
    h('div.limits', [
      h('p.label', 'Limits of the method'),
      h(
        'ul',
        limits.map(limit => limitItem(limit, setting)),
      ),
    ]),
  ]
}

function limitItem({ says, kept, method, reference }: LimitLine, setting: Setting): Element {
  const state = kept ? h('span.verdict', [tick(), 'kept:']) : h('span.verdict.fails', [cross(), h('b', 'exceeded:')])
  const source = reference ? [' ', h('span.source', [referenceHtml(reference, setting)])] : []
  return h('li', [
    state,
    ' ',
    h('span.limit', prose(method === 'second' ? `second method: ${says}` : says, setting)),
    ...source,
  ])
}

/** What an engineer must keep in mind with this method; what an earlier block says already is not said again. */
export function cautionsHtml(block: CalcWorking, setting: Setting): Element[] {
  const { cautions } = block
  if (cautions.length === 0) return []
  const said = setting.first.cautions(block)
  const own = said ? cautions.filter(one => !said.cautions.includes(one)) : cautions
  if (said) {
    return [
      h('p.cautions-before', [h('b', 'Cautions: '), ...asAt(said), own.length > 0 ? '; and here:' : '.']),
      ...(own.length > 0 ? [h('div.cautions', listed(own, setting))] : []),
    ]
  }
  return [h('div.cautions', [h('p.label', 'Cautions'), ...listed(own, setting)])]
}

function listed(cautions: readonly string[], setting: Setting): Element[] {
  return cautions.length === 0
    ? []
    : [
        h(
          'ul',
          cautions.map(one => h('li', prose(one, setting))),
        ),
      ]
}
