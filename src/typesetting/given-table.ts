import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { GivenRow } from '../evaluation/workings.ts'
import { keyOf } from './given-key.ts'
import { prose, sentenceCase, textNode } from './prose.ts'
import { referenceHtml, usersHtml } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { linked, shortWords, shownText, valueCells } from './value-html.ts'

/**
 * What a calculation starts from: symbol, meaning, value, and where each came from. The only row of a list stands under its label.
 * What was left at a default that adds nothing is said in one sentence below.
 */
export function givenTable(rows: readonly GivenRow[], block: string, setting: Setting): Element[] {
  const own = rows.filter(row => !isItsLabel(row) && !isQuiet(row))
  const left = rows.filter(isQuiet)
  return [
    ...(own.length > 0 ? [table(own, block, setting)] : []),
    ...(left.length > 0 ? [leftAlone(left, own.length === 0, setting)] : []),
  ]
}

function table(rows: readonly GivenRow[], block: string, setting: Setting): Element {
  const given = h('th', { scope: 'colgroup', colSpan: 2 }, 'Given')
  const value = h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value')
  return h(rows.length === 1 ? 'table.given.one' : 'table.given', [
    h('thead', h('tr', [given, value, h('th', { scope: 'col' }, 'From')])),
    ...groups(rows).map(group => h('tbody', [...groupHead(group), ...group.map(row => givenRow(row, block, setting))])),
  ])
}

/** The label of a list row stands over the row already. */
function isItsLabel({ value, row }: GivenRow): boolean {
  return row !== undefined && row.label !== '' && value === row.label
}

/** Left at a default of nought or one, or at a word. */
function isQuiet({ taken, row, value }: GivenRow): boolean {
  return taken && !row && (typeof value === 'string' || /^-?[01](?:\.0*)?$/.test(value.digits))
}

/** `Left at their defaults: g_o 0 kN/m² (other permanent load)`, each with its anchor. */
function leftAlone(rows: readonly GivenRow[], alone: boolean, setting: Setting): Element {
  const each = rows.flatMap((row, index) => [...(index > 0 ? [textNode(', ')] : []), leftOne(row, setting)])
  const label = alone ? 'Given: nothing; left at their defaults: ' : 'Left at their defaults: '
  return h('p.defaults', [h('b', label), ...each, '.'])
}

function leftOne(row: GivenRow, setting: Setting): Element {
  const symbol: ElementContent[] = typeof row.value === 'string' ? [] : [symbolHtml(row.symbol, setting), textNode(' ')]
  return h('span.default', { id: row.id }, [
    ...symbol,
    h('b', shownText(row.value)),
    ' (',
    ...prose(gist(row.says), setting),
    ...sourceOf(row, setting),
    ')',
  ])
}

/** Where a default that was taken stands; what the author typed has no source but the author. */
function sourceOf({ reference }: GivenRow, setting: Setting): ElementContent[] {
  return reference ? [textNode('; '), referenceHtml(reference, setting)] : []
}

/** What an input is, without the explanations behind it. */
const gist = (says: string): string => /^(?:[^:;,(`]|`[^`]*`)*/.exec(says)?.[0].trim() ?? says

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
  const meaning = [
    ...prose(sentenceCase(row.says), setting),
    ...sourceOf(row, setting),
    ' ',
    ...usersHtml(setting.users(keyOf(row, block))),
  ]
  const { value, to } = row
  const cells =
    typeof value === 'string' && value.length > shortWords
      ? [h('td.meaning.worded', { colSpan: 3 }, h('div', [h('span', meaning), ' ', linked(value, to)]))]
      : [h('td.meaning', meaning), ...valueCells(value, to)]
  return h('tr', { id: row.id, className: row.taken ? ['taken-default'] : [] }, [
    h('td.symbol', typeof value === 'string' ? [] : [symbolHtml(row.symbol, setting)]),
    ...cells,
    h('td.from', row.to ? h('a', { href: `#${row.to}` }, row.from) : row.from === 'typed here' ? 'here' : row.from),
  ])
}
