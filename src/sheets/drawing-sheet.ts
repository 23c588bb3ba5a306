import type { Element } from 'hast'
import { h } from 'hastscript'
import type { DrawingRow, ScheduleTable, Workings } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import type { Setting } from '../typesetting/setting.ts'
import { symbolHtml } from '../typesetting/symbol-html.ts'
import { valueCells } from '../typesetting/value-html.ts'
import { grouped } from './grouped.ts'
import { part } from './part.ts'

/** What leaves the package: values for the drawings, and the schedules of its calculations. Nothing where there is neither. */
export function drawingSheet({ drawing, schedules }: Workings, setting: Setting): Element[] {
  if (drawing.length + schedules.length === 0) return []
  return [
    part('drawing', 'Values for the drawings and schedules', [
      ...drawingTable(drawing, setting),
      ...scheduleTables(schedules),
    ]),
  ]
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

function drawingTable(rows: readonly DrawingRow[], setting: Setting): Element[] {
  if (rows.length === 0) return []
  const value = h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value')
  const blocks = [...grouped(rows, ({ block }) => block.id).values()]
  return [
    h('div.drawing', [
      h('table.drawing', [
        h('thead', h('tr', [th('Symbol'), th('To be drawn'), value])),
        ...blocks.map(some => h('tbody', [groupRow(some), ...some.map(row => drawingRow(row, setting))])),
      ]),
    ]),
  ]
}

function groupRow([first]: readonly DrawingRow[]): Element {
  if (!first) throw new Error('a group has a row')
  const { id, number, name } = first.block
  return h('tr.group', h('th', { scope: 'rowgroup', colSpan: 4 }, [h('a', { href: `#${id}` }, number), ` ${name}`]))
}

function drawingRow({ symbol, says, value, to }: DrawingRow, setting: Setting): Element {
  return h('tr', [
    h('td.symbol', symbol ? [symbolHtml(symbol, setting)] : []),
    h('td.meaning', says),
    ...valueCells(value, to),
  ])
}

/** Columns for which half the width of the sheet has room. */
const roomForColumns = 4

/** The narrow ones side by side, then those that need the whole width. */
function scheduleTables(schedules: readonly ScheduleTable[]): Element[] {
  const isWide = ({ columns }: ScheduleTable): boolean => columns.length > roomForColumns
  const [narrow, wide] = [schedules.filter(one => !isWide(one)), schedules.filter(isWide)]
  return [
    ...(narrow.length > 0 ? [h('div.schedules.narrow', narrow.map(scheduleTable))] : []),
    ...(wide.length > 0 ? [h('div.schedules', wide.map(scheduleTable))] : []),
  ]
}

function scheduleTable({ block, title, columns, rows }: ScheduleTable): Element {
  const heads = columns.map(({ says, unit }, index) => {
    const numbers = rows.some(cells => typeof cells[index] === 'object')
    const name = numbers ? 'th.number' : 'th'
    return h(name, { scope: 'col' }, unit ? `${says}, ${unit}` : says)
  })
  return h('table.schedule', [
    h('caption', [
      `${title} `,
      h('span.block-name', [h('a', { href: `#${block.id}` }, block.number), ` ${block.name}`]),
    ]),
    h('thead', h('tr', heads)),
    h(
      'tbody',
      rows.map(cells => h('tr', cells.map(scheduleCell))),
    ),
  ])
}

const scheduleCell = (cell: ScheduleTable['rows'][number][number]): Element =>
  typeof cell === 'string' ? h('td', cell) : h('td.number', plainNumber(cell.digits))
