import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Line } from '../evaluation/workings.ts'
import { tickBox } from './marks.ts'
import { prose, sentenceCase } from './prose.ts'
import { referenceHtml, usersHtml } from './reference-html.ts'
import type { Anchor, Setting } from './setting.ts'

export interface Framed {
  readonly line: Line
  /** Small print under what the step says. */
  readonly notes?: readonly ElementContent[]
  readonly working: readonly ElementContent[]
  readonly users?: readonly Anchor[]
  /** True: the working runs under the words, over both columns. */
  readonly across?: boolean
}

/**
 * One numbered step of the ledger: its number, what it says, its working, at the margin the reference and the way on, and an empty
 * box for the checker. `data-line` and `data-kind` mark it for the pencil proof; no number is read from them.
 */
export function stepFrame(
  { line, notes = [], working, users = [], across = false }: Framed,
  setting: Setting,
): Element {
  const margin = [...(line.reference ? [referenceHtml(line.reference, setting)] : []), ...usersHtml(users)]
  const className = ['step', line.kind, ...(across ? ['across'] : [])]
  return h('div', { id: line.id, className, dataLine: line.number, dataKind: line.kind }, [
    h('div.no', line.number),
    h('div.words', [h('p.says', prose(sentenceCase(line.says))), ...notes]),
    h('div.work', [...working]),
    h('div.margin', margin),
    tickBox(),
  ])
}
