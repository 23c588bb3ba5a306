import type { Element } from 'hast'
import { h } from 'hastscript'
import type { GivenRow } from '../evaluation/workings.ts'
import { keyOf } from './given-key.ts'
import { prose, sentenceCase } from './prose.ts'
import { usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueCells } from './value-html.ts'

/** What a calculation starts from: symbol, meaning, value, and where each came from. The only row of a list stands under its label. */
export function givenTable(rows: readonly GivenRow[], block: string, setting: Setting): Element {
  return h('table.given', [
    h('caption', 'Given'),
    h(
      'thead',
      h('tr', [th('Symbol'), th('Meaning'), h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value'), th('From')]),
    ),
    ...groups(rows.filter(row => !isItsLabel(row))).map(group =>
      h('tbody', [...groupHead(group), ...group.map(row => givenRow(row, block, setting))]),
    ),
  ])
}

/** The label of a list row stands over the row already. */
function isItsLabel({ value, row }: GivenRow): boolean {
  return row !== undefined && row.label !== '' && value === row.label
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

/** Neighbouring rows of one list row together. */
export function groups<T extends { readonly row?: GivenRow['row'] }>(rows: readonly T[]): T[][] {
  const grouped: T[][] = []
  for (const row of rows) {
    const last = grouped.at(-1)
    if (last && sameRow(last[0]?.row, row.row)) last.push(row)
    else grouped.push([row])
  }
  return grouped
}

function sameRow(a: GivenRow['row'], b: GivenRow['row']): boolean {
  return a?.index === b?.index && a?.of === b?.of && a?.label === b?.label
}

function groupHead([first]: readonly GivenRow[]): Element[] {
  if (!first?.row) return []
  return [h('tr.group', h('th', { scope: 'rowgroup', colSpan: 5 }, rowTitle(first.row)))]
}

/** `Row 2 of 3: concrete`; the label alone where there is one row. */
export function rowTitle({ index, of, label }: NonNullable<GivenRow['row']>): string {
  if (of === 1 && label) return label
  const counted = `Row ${index} of ${of}`
  return label ? `${counted}: ${label}` : counted
}

function givenRow(row: GivenRow, block: string, setting: Setting): Element {
  const meaning = [...prose(sentenceCase(row.says)), ' ', ...usersHtml(setting.users(keyOf(row, block)), 4)]
  const words = typeof row.value === 'string'
  return h('tr', { id: row.id, className: row.taken ? ['taken-default'] : [] }, [
    h('td.symbol', words ? [] : [symbolHtml(row.symbol, setting)]),
    h('td.meaning', meaning),
    ...valueCells(row.value, row.to),
    h('td.from', row.to ? h('a', { href: `#${row.to}` }, row.from) : row.from),
  ])
}
