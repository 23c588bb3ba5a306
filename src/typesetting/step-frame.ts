import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Line } from '../evaluation/workings.ts'
import type { Anchor } from './anchor.ts'
import { checkerBox, commentNotes } from './checker-marks.ts'
import { prose, sentenceCase } from './prose.ts'
import { mostUsers, referenceHtml, usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'

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
export function stepFrame(framed: Framed, setting: Setting): Element {
  const { line, working, users = [], across = false } = framed
  if (setting.row?.short) return shortFrame(framed, setting)
  const used = usersHtml(users, setting.row ? 1 : mostUsers)
  const margin = [...(setting.row ? [] : referenceOf(line, setting)), ' ', ...used]
  const className = ['step', line.kind, ...(setting.row ? ['row'] : []), ...(across ? ['across'] : [])]
  return h('div', { id: line.id, className, dataLine: line.number, dataKind: line.kind }, [
    h('div.no', line.number),
    h('div.head', [
      h('div.words', setting.row ? rowWords(line, setting) : words(framed, setting)),
      h('div.margin', margin),
    ]),
    checkerBox(setting.checked?.get(line.id)),
    h('div.work', [...working]),
  ])
}

/** A row that only its number tells from the others: number, working and box on one line. */
function shortFrame({ line, working }: Framed, setting: Setting): Element {
  const { id, number, kind } = line
  return h('div', { id, className: ['step', kind, 'row', 'short'], dataLine: number, dataKind: kind }, [
    h('div.no', number),
    h('div.work', [...working, ...commentNotes(setting.checked?.get(id))]),
    checkerBox(setting.checked?.get(id)),
  ])
}

/** The head of a step over several rows: what it says and its symbols, once; the rows below it have the numbers and the boxes. */
export function sharedHead(framed: Framed, setting: Setting): Element {
  const { line, working, across = false } = framed
  return h('div', { className: ['shared-head', ...(across ? ['across'] : [])] }, [
    h('div.no', line.number.replace(/[a-z]+$/, '')),
    h('div.head', [h('div.words', words(framed, setting)), h('div.margin', referenceOf(line, setting))]),
    h('div.work', [...working]),
  ])
}

function words({ line, notes = [] }: Framed, setting: Setting): ElementContent[] {
  return [
    h('p.says', prose(sentenceCase(line.says), setting)),
    ...notes,
    ...commentNotes(setting.checked?.get(line.id)),
  ]
}

function rowWords(line: Line, setting: Setting): ElementContent[] {
  return [h('p.says', rowLabel(line)), ...commentNotes(setting.checked?.get(line.id))]
}

function referenceOf({ reference }: Line, setting: Setting): ElementContent[] {
  return reference ? [referenceHtml(reference, setting)] : []
}

function rowLabel({ row }: Line): string {
  return row ? `${row.index}${row.label ? ` ${row.label}` : ''}` : ''
}
