import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { ShownEnd, ShownMargin } from '../study/shown-margins.ts'
import { shownText } from '../typesetting/value-html.ts'

/** What the margins in the register say, once above them. */
export const marginsExplained =
  'Margin: how far an assumption can move by itself, all others as written, until the check named there turns or a method refuses. ' +
  'Searched from nought to twice the value, and twice as far as the range at least; “nothing” turned up to the place named. Second methods are left out, save what the text refers to. The command vary says why a method refuses.'

/** Both ends of a margin, each with the number of the check that turns there, linked. */
export function marginNote({ down, up }: ShownMargin): Element {
  if (down.kind === 'none' && up.kind === 'none')
    return h('div.margin-note', `${shownText(down.at)} to ${shownText(up.at)}: nothing`)
  return h('div.margin-note', [h('div', endNote('down to', down)), h('div', endNote('up to', up))])
}

function endNote(way: string, end: ShownEnd): ElementContent[] {
  const inside = end.kind !== 'none' && end.inRange ? [h('b.outside', ' inside the range')] : []
  return [{ type: 'text', value: `${way} ${shownText(end.at)}: ` }, cause(end), ...inside]
}

function cause(end: ShownEnd): Element {
  if (end.kind === 'none') return h('span', 'nothing')
  if (end.kind === 'refusal') return h('i', { title: end.says }, 'refused')
  const [check] = end.checks
  return check?.id ? h('a', { href: `#${check.id}` }, check.number) : h('span', check?.says ?? '')
}
