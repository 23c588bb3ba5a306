import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CoverageLine } from '../evaluation/workings.ts'
import { caution, tick } from '../typesetting/marks.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import { isDoubtful } from '../typesetting/tally-checks.ts'
import { grouped } from './grouped.ts'

/** The coverage ledger: for each limit state and service the blocks that answer it, or why it does not apply, or that nothing does. */
export function coverageTables(coverage: readonly CoverageLine[]): Element[] {
  const wings = grouped(coverage, ({ wing }) => wing)
  const heads = ['Limit state or service', 'Answered in', 'Checks'].map(name => h('th', { scope: 'col' }, name))
  return [
    h('h3', 'Coverage'),
    h('p.coverage-told', coverageWords(coverage)),
    h('table.coverage', [h('thead', h('tr', heads)), ...[...wings].map(([wing, lines]) => wingRows(wing, lines))]),
  ]
}

/** `31 of 60 limit states and services answered, 4 left out with a reason, 25 not covered`. */
export function coverageWords(coverage: readonly CoverageLine[]): string {
  const [answered, settled] = [coverage.filter(isAnswered), coverage.filter(({ reason }) => reason !== undefined)]
  const open = coverage.length - answered.length - settled.length
  const none = settled.length > 0 ? `, ${settled.length} left out with a reason` : ''
  return `${answered.length} of ${coverage.length} limit states and services answered${none}, ${open} not covered`
}

export const isOpen = (line: CoverageLine): boolean => !isAnswered(line) && line.reason === undefined
const isAnswered = ({ by }: CoverageLine): boolean => by.length > 0

function wingRows(wing: string, lines: readonly CoverageLine[]): Element {
  const open = lines.filter(isOpen)
  return h('tbody', [
    h('tr.group', h('th', { scope: 'rowgroup', colSpan: 3 }, wing)),
    ...lines.filter(isAnswered).map(answeredRow),
    ...[
      ...grouped(
        lines.filter(({ reason }) => reason !== undefined),
        ({ reason }) => reason,
      ),
    ].map(settledRow),
    ...(open.length > 0 ? [openRow(open)] : []),
  ])
}

function answeredRow({ says, by }: CoverageLine): Element {
  const blocks = by.flatMap(({ id, number, name }, index): ElementContent[] => [
    { type: 'text', value: index > 0 ? ', ' : '' },
    ...anchorLinks([{ id, number }]),
    h('span.where', ` ${name}`),
  ])
  return h('tr', [h('td.meaning', says), h('td', blocks), checksOf(by.flatMap(({ checks }) => checks))])
}

function checksOf(checks: CoverageLine['by'][number]['checks']): Element {
  if (checks.length === 0) return h('td', 'none made')
  const kept = checks.filter(check => check.satisfied && !isDoubtful(check))
  const all = kept.length === checks.length
  return h('td', [all ? tick() : caution(), ` ${kept.length} of ${checks.length} satisfied`])
}

/** `Blast and shock; punching shear`. */
export function listed(lines: readonly Pick<CoverageLine, 'says'>[]): string {
  const words = lines.map(({ says }) => says)
  const [first = '', ...rest] = words
  return [first, ...rest.map(text => text.charAt(0).toLowerCase() + text.slice(1))].join('; ')
}

function settledRow([reason = '', lines]: [string | undefined, readonly CoverageLine[]]): Element {
  return h('tr.settled', h('td', { colSpan: 3 }, [`${listed(lines)}: `, h('b', 'left out'), `, ${reason}`]))
}

function openRow(lines: readonly CoverageLine[]): Element {
  return h('tr.open', h('td', { colSpan: 3 }, [caution(), h('b', ' Not covered'), ': ', listed(lines), '.']))
}
