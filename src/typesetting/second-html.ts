import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CalcWorking, ComparisonLine, SecondWorking, Shared } from '../evaluation/workings.ts'
import { linesHtml } from './line-html.ts'
import { cross, tick } from './marks.ts'
import { plainProse, prose, textNode } from './prose.ts'
import { asAt } from './reference-html.ts'
import { withSeams } from './seams.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueHtml } from './value-html.ts'

/** The independent method: its working, how far the answers are apart, the band and why, and what both methods share. */
export function secondHtml(block: CalcWorking, setting: Setting): Element[] {
  const { second } = block
  if (!second) return []
  const label = h('p.label', ['Second method: ', ...prose(second.title, setting)])
  if (second.absent) return [h('div.second', [label, h('p.purpose', prose(second.absent, setting))])]
  return [
    h('div.second', [
      h('div.second-head', [label, introduction(block, second, setting)]),
      ...linesHtml(second.lines, block.name, setting),
      ...comparedHtml(second, setting),
    ]),
  ]
}

/** The answers side by side and what they share; where none is compared, that. */
function comparedHtml({ comparisons: lines, shares }: SecondWorking, setting: Setting): Element[] {
  if (lines.length === 0) return [h('p.shares', 'For these inputs no answer of the two methods is compared.')]
  return [
    ...withSeams([comparisons(lines, setting)]),
    h('p.shares', [h('b', 'Both methods share: '), ...shared(shares, setting)]),
  ]
}

/** What the method is, in full where it is first used. */
function introduction(block: CalcWorking, second: SecondWorking, setting: Setting): Element {
  const before = setting.first.second(block)
  return h('p.purpose', before ? ['The method is ', ...asAt(before), '.'] : prose(second.says, setting))
}

/** Inputs by their symbols, steps with the number of their line too. */
function shared(shares: readonly Shared[], setting: Setting): ElementContent[] {
  if (shares.length === 0) return [textNode('nothing but the statement of the problem.')]
  const each = shares.flatMap((one, index) => {
    const last = index === shares.length - 1
    return [h('span.one', [...sharedOne(one, setting), textNode(last ? '.' : ',')]), textNode(' ')]
  })
  return [...each, textNode('An error there shows in neither.')]
}

function sharedOne({ symbol, says, number, to }: Shared, setting: Setting): ElementContent[] {
  const link = { ...(to ? { href: `#${to}` } : {}), title: plainProse(says) }
  const set = h(to ? 'a' : 'span', link, [symbolHtml(symbol, setting)])
  return number ? [set, textNode(` of ${number}`)] : [set]
}

function comparisons(lines: readonly ComparisonLine[], setting: Setting): Element {
  return h('table.comparisons', [
    h('thead', h('tr', ['The two methods compared', 'First', 'Second', 'Apart', 'Expected within', 'Result'].map(th))),
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
    h('td', [symbolHtml(line.first.symbol, setting), h('span.in-words', prose(line.says, setting))]),
    h('td.number', valueHtml(line.first.shown, line.first.to)),
    h('td.number', valueHtml(line.second.shown, line.second.to)),
    h('td.number', line.differenceShown),
    h('td.number', line.bandShown),
    h('td', agrees),
  ])
}
