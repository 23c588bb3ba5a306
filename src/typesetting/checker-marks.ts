import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CheckerComment, CheckerMark } from './checker-mark.ts'
import { tick, tickBox } from './marks.ts'
import { sentenceCase } from './prose.ts'

/** The checker's box of a step: empty, or ticked with the initials under it; initials of a tick that fell are struck out and named as such. */
export function checkerBox(mark: CheckerMark | undefined): Element {
  if (!mark || mark.initials.length + mark.fallen.length === 0) return tickBox()
  const ticked = mark.initials.length > 0
  return h('div.checked', [
    h('span.box', ticked ? [tick()] : []),
    ...(ticked
      ? [h('span.initials', { ariaLabel: `ticked by ${mark.initials.join(', ')}` }, mark.initials.join(' '))]
      : []),
    ...(mark.fallen.length > 0
      ? [h('s.initials', { ariaLabel: `fallen tick of ${mark.fallen.join(', ')}` }, mark.fallen.join(' '))]
      : []),
  ])
}

/** The comments at a step, in small print under what it says. */
export function commentNotes(mark: CheckerMark | undefined): ElementContent[] {
  return (mark?.comments ?? []).map(comment => h('p.comment', commentWords(comment)))
}

/** Who asked what and when, and the answer, if there is one. */
export function commentWords({ number, by, on, says, settled }: CheckerComment): (ElementContent | string)[] {
  const answer = settled ? `Settled by ${settled.by}, ${settled.on}: ${sentenceCase(settled.says)}` : ''
  return [
    h('a', { href: `#comment-${number}` }, number),
    ` ${by}, ${on}: ${sentenceCase(says)} `,
    settled ? answer : h('b', 'Open.'),
  ]
}
