import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Line } from '../evaluation/workings.ts'
import { tickBox } from './marks.ts'
import { prose, sentenceCase } from './prose.ts'
import { referenceHtml, usersHtml } from './reference-html.ts'
import type { Anchor, Setting } from './setting.ts'

export interface Framed {
  readonly line: Line
  readonly body: readonly ElementContent[]
  readonly users?: readonly Anchor[]
}

/**
 * One numbered step: its number, its body, at the margin the reference and the way on, and an empty box for the checker.
 * `data-line` and `data-kind` mark it for the pencil proof; no number is read from them.
 */
export function stepFrame({ line, body, users }: Framed, setting: Setting): Element {
  const margin = [...(line.reference ? [referenceHtml(line.reference, setting)] : []), ...usersHtml(users ?? [])]
  return h('div', { id: line.id, className: ['step', line.kind], dataLine: line.number, dataKind: line.kind }, [
    h('div.no', line.number),
    h('div.body', [...body]),
    h('div.margin', margin),
    tickBox(),
  ])
}

/** What a step is, in words. */
export function says(text: string): Element {
  return h('p.says', prose(sentenceCase(text)))
}
