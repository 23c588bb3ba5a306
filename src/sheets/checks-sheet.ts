import type { Element } from 'hast'
import { h } from 'hastscript'
import { plainNumber } from '../quantity/number-print.ts'
import { caution, ratioBar, verdict } from '../typesetting/marks.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import type { Setting } from '../typesetting/setting.ts'
import { isDoubtful } from '../typesetting/tally-checks.ts'
import { type Checked, type CheckedSection, checkWords, governing, isGeometry } from './gather-checks.ts'
import { narrowValueCells } from './long-units.ts'
import { part } from './part.ts'

/** The summary of checks: the governing one at the head, then every check, the tightest first within a section of the text. */
export function checksSheet(sections: readonly CheckedSection[], setting: Setting): Element {
  const checks = sections.flatMap(section => section.checks)
  if (checks.length === 0) return part('checks', 'Summary of checks', [h('p', 'The package makes no check.')])
  return part('checks', 'Summary of checks', [
    ...governingBox(checks, setting),
    ...doubtful(checks),
    table(sections, setting),
  ])
}

function governingBox(checks: readonly Checked[], setting: Setting): Element[] {
  const { main, geometry } = governing(checks)
  return [
    h('div.governing-checks', [
      ...(main ? [governs('Governing check', main, setting)] : []),
      ...(geometry ? [governs('Governing check of geometry', geometry, setting)] : []),
    ]),
  ]
}

/** What the mark of a doubtful check means, and which checks bear it. */
function doubtful(checks: readonly Checked[]): Element[] {
  const lines = checks.map(({ line }) => line).filter(isDoubtful)
  if (lines.length === 0) return []
  return [
    h('p.doubts', [
      caution(),
      ' Satisfied, but to be judged apart, because a limit of the method is exceeded or its second method differs: ',
      ...anchorLinks(lines),
      '.',
    ]),
  ]
}

function governs(label: string, worst: Checked, setting: Setting): Element {
  const { line, block, blockTitle } = worst
  const ratio = line.ratio ? [ratioBar(line.ratio.value), h('b.ratio', plainNumber(line.ratio.shown.digits))] : []
  return h('div.governing', [
    h('p.label', label),
    h('p.what', [
      h('a', { href: `#${line.id}` }, line.number),
      ' ',
      h('b', checkWords(worst, setting)),
      h('span.where', ` in ${block.number} ${blockTitle} (${block.name})`),
    ]),
    h('p.outcome', [...ratio, verdict(line)]),
  ])
}

function table(sections: readonly CheckedSection[], setting: Setting): Element {
  const named = sections.length > 1
  return h('table.checks', [
    h('thead', h('tr', [th('No.'), th('Check'), th('Demand', 2), th('Capacity', 2), th('Ratio', 2), th('Result')])),
    ...sections.map(({ title, checks }) =>
      h('tbody', [
        ...(named ? [h('tr.group', h('th', { scope: 'rowgroup', colSpan: 9 }, title))] : []),
        ...checks.map(check => checkRow(check, setting)),
      ]),
    ),
  ])
}

function th(text: string, colSpan = 1): Element {
  return colSpan > 1 ? h('th.value', { scope: 'colgroup', colSpan }, text) : h('th', { scope: 'col' }, text)
}

function checkRow(check: Checked, setting: Setting): Element {
  const { line, block } = check
  const demand = line.demand ? narrowValueCells(line.demand) : [h('td', { colSpan: 2 })]
  const capacity = line.capacity ? narrowValueCells(line.capacity) : [h('td', { colSpan: 2 })]
  const ratio = line.ratio
    ? [h('td.bar', [ratioBar(line.ratio.value)]), h('td.number', plainNumber(line.ratio.shown.digits))]
    : [h('td', { colSpan: 2 })]
  return h('tr', { className: line.satisfied ? [] : ['fails'] }, [
    h('td.no', h('a', { href: `#${line.id}` }, line.number)),
    h('td.meaning', [
      ...checkWords(check, setting),
      h('span.where', ` ${block.name}${isGeometry(check) ? ', geometry' : ''}`),
    ]),
    ...demand,
    ...capacity,
    ...ratio,
    h('td', [verdict(line)]),
  ])
}
