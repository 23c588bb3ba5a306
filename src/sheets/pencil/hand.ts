import type { Mark } from './mark.ts'

/** The reader's finger on a line of marks. */
export interface Hand {
  readonly marks: readonly Mark[]
  at: number
}

export const hand = (marks: readonly Mark[]): Hand => ({ marks, at: 0 })
export const seen = (hand: Hand, ahead = 0): Mark | undefined => hand.marks[hand.at + ahead]
export const done = (hand: Hand): boolean => hand.at >= hand.marks.length

/** Whether this sign stands next, and the finger past it if it does. */
export function takes(hand: Hand, ...signs: readonly string[]): string | undefined {
  const mark = seen(hand)
  if (mark?.kind !== 'sign' || !signs.includes(mark.text)) return undefined
  hand.at += 1
  return mark.text
}

/** The text of the next mark where it is a sign. */
export function signAhead(hand: Hand, ahead = 0): string | undefined {
  const mark = seen(hand, ahead)
  return mark?.kind === 'sign' ? mark.text : undefined
}
