import type { Element } from 'hast'
import { h } from 'hastscript'
import type { PointsTable } from '../evaluation/workings.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueHtml } from './value-html.ts'

/** An author's own table, points in columns, as it was typed; values between points are interpolated on a straight line. */
export function pointsTable({ name, says, points }: PointsTable, setting: Setting): Element {
  const row = (head: string, values: Element[]): Element =>
    h('tr', [h('th', { scope: 'row' }, head), ...values.map(value => h('td', [value]))])
  return h('table.points', [
    h('caption', ['Table ', symbolHtml(name, setting), says ? `: ${says}` : '']),
    h('tbody', [
      row(
        'at',
        points.map(({ x }) => valueHtml(x)),
      ),
      row(
        'value',
        points.map(({ y }) => valueHtml(y)),
      ),
    ]),
  ])
}
