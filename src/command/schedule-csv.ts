import { stringify } from 'csv-stringify/sync'
import type { DrawingRow, ScheduleTable } from '../evaluation/workings.ts'
import { unitText } from '../quantity/unit.ts'

/** Values for the drawings as CSV (RFC 4180): where each is worked out, its name, what it is, amount and unit. */
export function drawingCsv(rows: readonly DrawingRow[]): string {
  const heads = ['calculation', 'block', 'value', 'meaning', 'amount', 'unit']
  return csv([
    heads,
    ...rows.map(({ block, name, says, value }) => [
      ...[block.number, block.name, name, says].map(words),
      ...(typeof value === 'string' ? [words(value), ''] : [value.digits, unitText(value.unit)]),
    ]),
  ])
}

/** A schedule as CSV (RFC 4180): each column's unit stands in its head. */
export function scheduleCsv({ columns, rows }: ScheduleTable): string {
  const heads = columns.map(({ says, unit }) => (unit ? `${says} (${unit})` : says))
  return csv([heads, ...rows.map(cells => cells.map(cell => (typeof cell === 'string' ? words(cell) : cell.digits)))])
}

const csv = (rows: readonly (readonly string[])[]): string => stringify([...rows], { record_delimiter: 'windows' })

/** Words of the author's that a spreadsheet would run as a formula are made plain text. */
const words = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text)
