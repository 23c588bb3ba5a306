import type { Element } from 'hast'
import { h } from 'hastscript'
import type { ComparisonLine, SecondWorking } from '../evaluation/workings.ts'
import { linesHtml } from './line-html.ts'
import { cross, tick } from './marks.ts'
import { prose } from './prose.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueHtml } from './value-html.ts'

/** The independent method: its working, how far the answers are apart, the band and why, and what both methods share. */
export function secondHtml(second: SecondWorking, block: string, setting: Setting): Element {
  const head = h('p.label', ['Second method: ', second.title])
  if (second.absent) return h('div.second', [head, h('p', second.absent)])
  return h('div.second', [
    head,
    h('p.purpose', prose(second.says)),
    ...linesHtml(second.lines, block, setting),
    comparisons(second.comparisons, setting),
    h('p.shares', [h('b', 'Both methods share: '), shared(second.shares)]),
  ])
}

function shared(names: readonly string[]): string {
  if (names.length === 0) return 'nothing but the statement of the problem.'
  return `${names.join(', ')}. An error there shows in neither.`
}

function comparisons(lines: readonly ComparisonLine[], setting: Setting): Element {
  return h('table.comparisons', [
    h('caption', 'The two methods compared'),
    h('thead', h('tr', ['Quantity', 'First', 'Second', 'Apart', 'Expected within', 'Result'].map(th))),
    h(
      'tbody',
      lines.map(line => comparisonRow(line, setting)),
    ),
  ])
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

function comparisonRow(line: ComparisonLine, setting: Setting): Element {
  const agrees = line.agrees
    ? h('span.verdict', [tick(), h('b', 'agree')])
    : h('span.verdict.fails', [cross(), h('b', 'differ')])
  return h('tr', [
    h('td', [symbolHtml(line.first.symbol, setting), h('span.in-words', prose(line.says))]),
    h('td.number', valueHtml(line.first.shown, line.first.to)),
    h('td.number', valueHtml(line.second.shown, line.second.to)),
    h('td.number', line.differenceShown),
    h('td.number', line.bandShown),
    h('td', agrees),
  ])
}
