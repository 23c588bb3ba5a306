import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Printed, SolveLine } from '../evaluation/workings.ts'
import { usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { says, stepFrame } from './step-frame.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueCells, valueHtml } from './value-html.ts'

/** Values of a numerical method: what it is, what went in, what came out, and how it verified itself. Not for the pencil. */
export function solveLine(line: SolveLine, block: string, setting: Setting): Element {
  const body = [
    says(line.says),
    h('p.method', [h('b', line.title), '. ', line.method]),
    h('table.solve', [
      h('caption', 'By a numerical method, not by pencil'),
      h('tbody', [h('tr.head', [th('Goes in'), th('Value', 2)]), ...line.takes.map(takenRow)]),
      h('tbody', [
        h('tr.head', [th('Comes out'), th('Value', 2)]),
        ...line.gives.map(given => givenRow(given, block, setting)),
      ]),
    ]),
    h('p.verified', [h('b', 'Verified: '), line.verified]),
  ]
  return stepFrame({ line, body }, setting)
}

function th(text: string, colSpan = 1): Element {
  return h('th', { scope: 'col', ...(colSpan > 1 ? { colSpan, className: ['value'] } : {}) }, text)
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
