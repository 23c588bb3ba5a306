import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Interpolated, LookedAxis, LookLine } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { unitText } from '../quantity/unit.ts'
import { entryHtml, equationHtml } from './equation-html.ts'
import { prose, textNode } from './prose.ts'
import { asAt } from './reference-html.ts'
import type { Setting } from './setting.ts'
import { stepFrame } from './step-frame.ts'
import type { Laid } from './step-layout.ts'
import { shownText } from './value-html.ts'

/** A value from a published table with the cells round it and the interpolation, so that the book need not be opened. */
export function lookLine(line: LookLine, block: string, setting: Setting): Element {
  const interpolations = line.interpolations.map(one => equationHtml(one, setting))
  const entry = entryHtml({ symbol: line.symbol, taken: takenFrom(line), result: line.result }, setting)
  return stepFrame(
    {
      line,
      notes: [tableNote(line, setting)],
      working: [
        h('div.looked', [neighbourhood(line), entry]),
        ...line.interpolations.map((one, index) => interpolation(one, interpolations[index], setting)),
      ],
      users: setting.users(`${block}.${line.name}`),
      across: interpolations.some(({ across }) => across),
    },
    setting,
  )
}

/** What table it is and what its axes are. */
export function tableNote(line: LookLine, setting: Setting): Element {
  return h('p.source-table', [...tableWords(line, setting), ...prose(axes(line), setting)])
}

/** The table and how sure we are of it, in full where it is first used. */
function tableWords(line: LookLine, setting: Setting): ElementContent[] {
  const before = setting.first.line(line)
  return before
    ? [textNode('Table '), ...asAt(before)]
    : [...prose(line.title, setting), h('span.status', ` (${line.status})`)]
}

function takenFrom(line: LookLine): Shown {
  return line.interpolations.at(-1)?.result ?? { digits: line.corners[0]?.[0] ?? '', unit: line.unit, exact: true }
}

/** What the axes are; a value that was looked up is said, a word stands at its row or column. */
function axes(line: LookLine): string {
  const named = [line.rowAxis, ...(line.columnAxis ? [line.columnAxis] : [])]
  return `; by ${named.map(axisWords).join('; ')}`
}

function axisWords({ says, key }: LookedAxis): string {
  return typeof key === 'string' ? says : `${says}, ${shownText(key.shown)}`
}

/** The cells used, under their keys. The cell that is taken as it stands is marked. */
function neighbourhood(line: LookLine): Element {
  const columns = line.columnAxis ? keysOf(line.columnAxis) : []
  const rows = keysOf(line.rowAxis)
  const whole = line.interpolations.length === 0
  return h('table.neighbourhood', [
    ...(columns.length > 0
      ? [h('thead', h('tr', [h('td.corner'), ...columns.map(key => h('th', { scope: 'col' }, key))]))]
      : []),
    h(
      'tbody',
      rows.map((key, row) => h('tr', [h('th', { scope: 'row' }, key), ...cells(line.corners[row] ?? [], whole)])),
    ),
  ])
}

function cells(row: readonly string[], whole: boolean): Element[] {
  return row.map(cell => h(whole ? 'td.taken' : 'td', plainNumber(cell)))
}

/** The keys on both sides of the value looked up; one where it stands on a key. */
function keysOf({ lower, upper, unit }: LookedAxis): string[] {
  const after = unit ? unitText(unit) : ''
  const keys = lower === upper ? [lower] : [lower, upper]
  return keys.map(key => (after ? `${numeral(key)} ${after}` : numeral(key)))
}

function numeral(key: string): string {
  return /^-?[\d.]+(e-?\d+)?$/.test(key) ? plainNumber(key) : key
}

function interpolation(one: Interpolated, laid: Laid | undefined, setting: Setting): Element {
  return h('div.interpolation', [h('p.because', prose(one.says, setting)), ...(laid ? [laid.html] : [])])
}
