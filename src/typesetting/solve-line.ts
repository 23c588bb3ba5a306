import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Printed, SolveLine } from '../evaluation/workings.ts'
import { prose } from './prose.ts'
import { asAt, usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { stepFrame } from './step-frame.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueCells, valueHtml } from './value-html.ts'

/** Values of a numerical method: what it is, what went in, what came out, and how it verified itself. Not for the pencil. */
export function solveLine(line: SolveLine, block: string, setting: Setting): Element {
  const taken = h('p.takes', [
    h('b', 'Goes in: '),
    ...line.takes.flatMap((taken, index) => takenWords(taken, index, setting)),
    '.',
  ])
  const given = h('table.solve', [
    h(
      'thead',
      h('tr', [h('th', { scope: 'col' }, 'Comes out'), h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value')]),
    ),
    h(
      'tbody',
      line.gives.map(each => givenRow(each, block, setting)),
    ),
  ])
  const verified = h('p.verified', [h('b', 'Verified: '), ...prose(line.verified, setting)])
  return stepFrame({ line, notes: [methodWords(line, setting)], working: [taken, given, verified] }, setting)
}

/** The method in full where it is first used. */
function methodWords(line: SolveLine, setting: Setting): Element {
  const before = setting.first.line(line)
  const title = [h('b', line.title), ', a numerical method, not for the pencil']
  return before
    ? h('p.method', [...title, ': ', ...asAt(before), '.'])
    : h('p.method', [...title, '. ', ...prose(line.method, setting)])
}

type Taken = SolveLine['takes'][number]

/** What goes in, in one sentence: `unit weight above the water 19 kN/m³; thickness 1.6 m, 3.0 m`. */
function takenWords({ says: meaning, value }: Taken, index: number, setting: Setting): ElementContent[] {
  const values = typeof value === 'string' ? [valueHtml(value)] : listed([value].flat())
  return [...prose(`${index > 0 ? '; ' : ''}${meaning} `, setting), ...values]
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
    ...prose(given.says, setting),
    ' ',
    ...usersHtml(setting.users(`${block}.${given.name}`)),
  ]
  const [number, unit] = valueCells(printed.shown)
  return h('tr', { id: given.id }, [h('td', meaning), number ?? h('td'), unit ?? h('td')])
}
