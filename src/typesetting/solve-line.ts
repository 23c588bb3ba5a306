import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Printed, SolveLine } from '../evaluation/workings.ts'
import { asAt, usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { stepFrame } from './step-frame.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueCells, valueHtml } from './value-html.ts'

/** Values of a numerical method: what it is, what went in, what came out, and how it verified itself. Not for the pencil. */
export function solveLine(line: SolveLine, block: string, setting: Setting): Element {
  const tables = h('div.solved', [
    solveTable('Goes in', line.takes.map(takenRow)),
    solveTable(
      'Comes out',
      line.gives.map(given => givenRow(given, block, setting)),
    ),
  ])
  const verified = h('p.verified', [h('b', 'Verified: '), line.verified])
  return stepFrame({ line, notes: [methodWords(line, setting)], working: [tables, verified], across: true }, setting)
}

/** The method in full where it is first used. */
function methodWords(line: SolveLine, setting: Setting): Element {
  const before = setting.first.line(line)
  const title = [h('b', line.title), ', a numerical method, not for the pencil']
  return before ? h('p.method', [...title, ': ', ...asAt(before), '.']) : h('p.method', [...title, '. ', line.method])
}

function solveTable(title: string, rows: readonly Element[]): Element {
  const head = h(
    'thead',
    h('tr', [h('th', { scope: 'col' }, title), h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value')]),
  )
  return h('table.solve', [head, h('tbody', [...rows])])
}

type Taken = SolveLine['takes'][number]

function takenRow({ says: meaning, value }: Taken): Element {
  return h('tr', [h('td', meaning), ...(isMany(value) ? [h('td', { colSpan: 2 }, listed(value))] : oneValue(value))])
}

function oneValue(value: string | Printed): Element[] {
  return typeof value === 'string' ? valueCells(value) : valueCells(value.shown, value.to)
}

function isMany(value: Taken['value']): value is readonly Printed[] {
  return Array.isArray(value)
}

function listed(values: readonly Printed[]): ElementContent[] {
  return values.flatMap(({ shown, to }, index): ElementContent[] => [
    ...(index > 0 ? [{ type: 'text' as const, value: ', ' }] : []),
    valueHtml(shown, to),
  ])
}

function givenRow(given: SolveLine['gives'][number], block: string, setting: Setting): Element {
  const { printed } = given
  const meaning = [
    symbolHtml(printed.symbol, setting),
    ' ',
    given.says,
    ' ',
    ...usersHtml(setting.users(`${block}.${given.name}`)),
  ]
  const [number, unit] = valueCells(printed.shown)
  return h('tr', { id: given.id }, [h('td', meaning), number ?? h('td'), unit ?? h('td')])
}
