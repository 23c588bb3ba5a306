import type { Element } from 'hast'
import { h } from 'hastscript'
import type { GivenRow } from '../evaluation/workings.ts'
import type { Anchor } from './anchor.ts'
import { fieldOf, keyOf } from './given-key.ts'
import { prose, sentenceCase } from './prose.ts'
import { usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueHtml } from './value-html.ts'

/** The given values of one list, row by row in their order. */
export type GivenList = readonly (readonly GivenRow[])[]

/** Lists of several rows, out of the given values; what stands alone is left. */
export function partLists(rows: readonly GivenRow[]): {
  readonly alone: readonly GivenRow[]
  readonly lists: readonly GivenList[]
} {
  const alone = rows.filter(({ row }) => !row || row.of === 1)
  const lists: GivenRow[][][] = []
  let before: GivenRow['row']
  for (const given of rows) {
    const { row } = given
    if (!row || row.of === 1) continue
    if (!before || row.index < before.index || row.of !== before.of) lists.push([])
    if (row.index !== before?.index || lists.at(-1)?.length === 0) lists.at(-1)?.push([])
    lists.at(-1)?.at(-1)?.push(given)
    before = row
  }
  return { alone, lists }
}

/** A list as a table: a row a line, a field a column, and under each value where it came from. */
export function givenList(list: GivenList, block: string, setting: Setting): Element {
  const fields = fieldsOf(list)
  return h('table.given-list', [
    h(
      'thead',
      h('tr', [h('th', { scope: 'col' }, 'Given, row by row'), ...fields.map(field => fieldHead(field, setting))]),
    ),
    h(
      'tbody',
      list.map(row => listRow(row, fields, { block, setting })),
    ),
  ])
}

/** One of each field, in the order of the module; labels stand at the row's head. */
function fieldsOf(list: GivenList): GivenRow[] {
  const fields = new Map<string, GivenRow>()
  for (const given of list.flat()) if (!isLabel(given) && !fields.has(fieldOf(given))) fields.set(fieldOf(given), given)
  return [...fields.values()]
}

function isLabel({ value, row }: GivenRow): boolean {
  return row !== undefined && row.label !== '' && value === row.label
}

function fieldHead(field: GivenRow, setting: Setting): Element {
  const words = typeof field.value === 'string'
  const symbol = words ? [] : [symbolHtml(runningSymbol(field), setting), ' ']
  return h('th', { scope: 'col', className: words ? [] : ['number'] }, [
    ...symbol,
    h('span', prose(sentenceCase(field.says), setting)),
  ])
}

/** `z_3` of the third row is `z_i` of any. */
function runningSymbol({ symbol, row }: GivenRow): string {
  const index = `_${row?.index ?? 0}`
  return symbol.endsWith(index) ? `${symbol.slice(0, -index.length)}_i` : symbol
}

interface At {
  readonly block: string
  readonly setting: Setting
}

function listRow(row: readonly GivenRow[], fields: readonly GivenRow[], at: At): Element {
  const place = row[0]?.row
  const title = [h('b', String(place?.index ?? '')), ' ', place?.label ?? '', ' ', ...usersHtml(usersOf(row, at))]
  return h('tr', [
    h('th', { scope: 'row' }, title),
    ...fields.map(field => cell(row.find(given => fieldOf(given) === fieldOf(field)))),
  ])
}

function usersOf(row: readonly GivenRow[], { block, setting }: At): Anchor[] {
  const users = row.flatMap(given => setting.users(keyOf(given, block)))
  return [...new Map(users.map(user => [user.id, user])).values()]
}

function cell(given: GivenRow | undefined): Element {
  if (!given) return h('td')
  const { id, value, to, from } = given
  const words = from === 'typed here' ? '' : from
  const origin = h('span.origin', to ? h('a', { href: `#${to}` }, words) : words)
  return h('td', { id, className: typeof value === 'string' ? [] : ['number'] }, [valueHtml(value, to), ' ', origin])
}
