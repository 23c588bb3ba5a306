import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import { plainNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import type { ShownEnd, ShownMargin } from '../study/shown-margins.ts'
import { shownText, unitPart } from '../typesetting/value-html.ts'

/** What the margins in the register say, once above them. */
export const marginsExplained =
  'Under the plausible range stands the margin: how far an assumption can move by itself, all others as written. In brackets stands what turns there: a check, by its number, or a method that refuses; ' +
  '“nothing” turned up to the place named. Searched from nought to twice the value, and twice as far as the range at least. Second methods are left out, save what the text refers to. What a choice is taken from is not moved. The command vary says why a method refuses.'

/** `1.8 to 2.6 m`: both ends with their unit once, where it is one. */
export function rangeText(from: Shown, to: Shown): string {
  const one = unitPart(from) === unitPart(to)
  return `${one ? plainNumber(from.digits) : shownText(from)} to ${shownText(to)}`
}

/** `12.60 (49.03) to 39 kN/m³ (nothing)`: both ends of a margin, each with the check that turns there, linked. */
export function marginNote({ down, up }: ShownMargin): Element {
  if (down.kind === 'none' && up.kind === 'none') return h('div.margin-note', `${rangeText(down.at, up.at)} (nothing)`)
  return h('div.margin-note', [
    `${plainNumber(down.at.digits)} `,
    ...causeIn(down),
    ` to ${shownText(up.at)} `,
    ...causeIn(up),
  ])
}

function causeIn(end: ShownEnd): ElementContent[] {
  const inside = end.kind !== 'none' && end.inRange ? [', ', h('b.outside', 'inside the range')] : []
  return h('span', ['(', cause(end), ...inside, ')']).children
}

function cause(end: ShownEnd): Element {
  if (end.kind === 'none') return h('span', 'nothing')
  if (end.kind === 'refusal') return h('i', { title: end.says }, 'refused')
  const [check] = end.checks
  return check?.id ? h('a', { href: `#${check.id}` }, check.number) : h('span', check?.says ?? '')
}
