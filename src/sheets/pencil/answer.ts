import { type Amount, alike, isPlain } from './amount.ts'
import { done, hand, seen, takes } from './hand.ts'
import { type Mark, marksText, Unreadable } from './mark.ts'
import { type Behind, readUnitBehind } from './read-unit.ts'
import { reckon } from './reckon.ts'

/** A printed answer: its number, the worth of one unit in its last figure, and the unit behind it. */
export interface Answer {
  readonly value: number
  readonly lastFigure: number
  readonly behind?: Behind
  readonly text: string
}

/**
 * Reads `= 26.08 kPa`. Noughts that end a whole number longer than `figures` are place holders, not figures.
 * Refuses (throws `Unreadable`) anything that is not one number with its unit.
 */
export function readAnswer(marks: readonly Mark[], figures: number): Answer {
  const at = hand(flat(marks))
  takes(at, '=')
  const sign = takes(at, '−', '-') ? -1 : 1
  const mark = seen(at)
  if (mark?.kind !== 'number') throw new Unreadable(`\`${marksText(marks)}\` is no answer`)
  at.at += 1
  const scale = powerOfTen(at.marks, at.at)
  if (scale.taken > 0) at.at += scale.taken
  const behind = readUnitBehind(at)
  if (!done(at)) throw new Unreadable(`\`${marksText(marks)}\` is no answer`)
  const value = sign * Number(mark.text) * scale.factor
  const text = marksText(marks)
  return { value, lastFigure: lastFigure(mark.text, figures) * scale.factor, text, ...(behind ? { behind } : {}) }
}

/** Groups that only hold a number together (`−1.5`, `1.2 × 10⁻⁶`) opened up. */
function flat(marks: readonly Mark[]): readonly Mark[] {
  return marks.flatMap(mark => (mark.kind === 'group' ? flat(mark.of) : [mark]))
}

function powerOfTen(marks: readonly Mark[], from: number): { readonly factor: number; readonly taken: number } {
  const [times, ten, power] = [marks[from], marks[from + 1], marks[from + 2]]
  const stands = times?.kind === 'sign' && times.text === '×' && ten?.kind === 'number' && ten.text === '10'
  if (!stands || power?.kind !== 'raised') return { factor: 1, taken: 0 }
  return { factor: Number(`1e${reckon(power.of).value}`), taken: 3 }
}

export function lastFigure(digits: string, figures: number): number {
  const [whole = '', decimals] = digits.split('.')
  if (decimals !== undefined) return Number(`1e-${decimals.length}`)
  const noughts = /0*$/.exec(whole)?.[0].length ?? 0
  return 10 ** Math.min(noughts, Math.max(0, whole.length - figures))
}

/** What the reckoned amount would be printed as beside the answer's unit; several where a bare line leaves it open. */
export function beside(amount: Amount, answer: Answer): readonly number[] {
  if (!answer.behind) return isPlain(amount) ? [amount.value] : []
  const { unit, offset } = answer.behind
  const converted = (amount.value - offset) / unit.value
  if (amount.units) return alike(amount, unit) ? [converted] : []
  if (!isPlain(amount)) return []
  return isPlain(unit) ? [converted, amount.value] : [amount.value]
}

/** Whether a reckoned number, rounded to the answer's last figure, differs from it by no more than one unit there. */
export function closes(reckoned: number, answer: Pick<Answer, 'value' | 'lastFigure'>): boolean {
  const unit = answer.lastFigure
  const apart = Math.abs(Math.round(reckoned / unit) - Math.round(answer.value / unit))
  return Number.isFinite(reckoned) && apart <= 1
}
