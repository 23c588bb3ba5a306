import type { Element } from 'hast'
import { h } from 'hastscript'
import { plainNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { standsClose, unitText } from '../quantity/unit.ts'

/** Space between a number and its unit, where no line breaks. */
const gap = '\u00a0'

/** A value as running text: `26.08 kPa`, `30°`, `12 500`. */
export function shownText(shown: Shown | string): string {
  return typeof shown === 'string' ? shown : plainNumber(shown.digits) + unitPart(shown)
}

/** The unit with the gap before it; empty text for a plain number. */
export function unitPart(shown: Shown): string {
  const unit = unitText(shown.unit)
  return unit && (standsClose(shown.unit) ? unit : gap + unit)
}

/** A value in running text, linked to where it was made. */
export function valueHtml(shown: Shown | string, to?: string): Element {
  const text = shownText(shown)
  return to ? h('a.value', { href: `#${to}` }, text) : h('span.value', text)
}

/** A text, linked to where it was made. */
export const linked = (text: string, to: string | undefined): Element =>
  to && text ? h('a', { href: `#${to}` }, text) : h('span', text)

/** Words of so many characters stand on one line of a column of values. */
export const shortWords = 12

/** A choice that reads as a number with its unit: `12 mm`. */
const measured = /^(?<number>\d[\d.]*) (?<unit>\S+)$/

/** A value as two table cells, so that a column of values lines up where number meets unit. Words fill both. */
export function valueCells(shown: Shown | string, to?: string): Element[] {
  const link = (text: string): Element => linked(text, to)
  if (typeof shown === 'string') {
    const { number, unit } = measured.exec(shown)?.groups ?? {}
    if (number && unit) return [h('td.number', link(number)), h('td.unit', unit)]
    return [h(shown.length > shortWords ? 'td.word.long' : 'td.word', { colSpan: 2 }, link(shown))]
  }
  const unit = unitPart(shown)
  const close = unit !== '' && !unit.startsWith(gap)
  const number = plainNumber(shown.digits) + (close ? unit : '')
  return [h('td.number', link(number)), h('td.unit', close ? '' : unit.trimStart())]
}
