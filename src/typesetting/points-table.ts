import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { PointsTable } from '../evaluation/workings.ts'
import { prose } from './prose.ts'
import { usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueHtml } from './value-html.ts'

/** As many points as stand beside each other. */
const across = 8

type Points = PointsTable['points']

/** An author's own table, points in columns, as it was typed; values between points are interpolated on a straight line. */
export function pointsTable({ name, says, points }: PointsTable, block: string, setting: Setting): Element {
  const remark: ElementContent[] = says ? prose(`: ${says}`, setting) : []
  const note = h('span.block-name', ' straight lines between the points')
  const users = usersHtml(setting.users(`${block}.${name}`))
  return h('table.points', [
    h('caption', ['Table ', symbolHtml(name, setting), ...remark, note, ...(users.length > 0 ? [' '] : []), ...users]),
    ...partsOf(points).map(part => pointRows(part, symbolHtml(name, setting))),
  ])
}

function partsOf(points: Points): Points[] {
  const count = Math.ceil(points.length / across)
  return Array.from({ length: count }, (_, index) => points.slice(index * across, (index + 1) * across))
}

function pointRows(points: Points, symbol: Element): Element {
  return h('tbody', [
    h('tr.at', [h('th', { scope: 'row' }, 'at'), ...points.map(({ x }) => h('td.number', [valueHtml(x)]))]),
    h('tr', [h('th', { scope: 'row' }, [symbol]), ...points.map(({ y }) => h('td.number', [valueHtml(y)]))]),
  ])
}
