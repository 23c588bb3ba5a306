import type { Change } from '../comparison/change-types.ts'
import type { Comparison } from '../comparison/types.ts'
import { printable } from '../diagnostic/printable.ts'
import { digitsOf, plainNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { unitText } from '../quantity/unit.ts'

/** What the two sides are called. */
export interface ComparedAbout {
  readonly title: string
  readonly old: { readonly label: string; readonly revision: string }
  readonly now: { readonly label: string; readonly revision: string }
  /** Other editions of the tool and its modules than an old package was issued with, in sentences. */
  readonly editions: readonly string[]
}

export const valueText = ({ digits, unit }: Shown): string => `${plainNumber(digits)} ${unitText(unit)}`.trim()

/** With its sign, plus too. */
export const signed = (digits: string): string => `${digits.startsWith('-') ? '' : '+'}${plainNumber(digits)}`

/** A relative move: `+4.2 %`; a factor where it is more than tenfold. */
export function shareText(share: number): string {
  if (!Number.isFinite(share)) return 'from 0'
  if (share >= 9) return `×${plainNumber(digitsOf(share + 1, 3))}`
  const digits = digitsOf(share * 100, 2)
  return `${signed(Math.abs(share) < 0.1 ? digits : (share * 100).toFixed(0))} %`
}

/** How far a typed number moved: `−0.5 m, −19 %`. */
export function stepText({ step }: Change): string {
  if (!step) return ''
  const { digits, unit } = step.amount
  const amount = `${signed(digits)} ${unit.offset === undefined ? unitText(unit) : unit.text === 'degF' ? '°F' : 'K'}`
  return [amount.trim(), ...(step.share === undefined ? [] : [shareText(step.share)])].join(', ')
}

/** What a change is called where something is said to move by it. */
export function changeName({ what, key, action }: Change): string {
  if (what === 'check') return `check of ${key}`
  if (what === 'module') return `module of ${key}`
  return what === 'block' ? `block ${key} ${action}` : key
}

/** One change in a line, without its name: `2.6 m → 2.1 m`, `added: 3 m`. */
export function changeText({ action, old, now, what }: Change): string {
  if (action === 'renamed') return `renamed from ${old}`
  if (what === 'block') return `${action}: ${now ?? old}`
  if (action === 'added') return `added: ${now}`
  if (action === 'removed') return `removed: ${old}`
  return old === now ? `${now ?? ''}` : `${old ?? ''} → ${now ?? ''}`
}

/** What is written otherwise and means the same, in phrases; none where there is nothing. */
export function restatedText({ restated: { written, order, layout, paragraphs } }: Comparison): string[] {
  const { added, removed } = paragraphs
  return [
    ...(written.length > 0 ? [`the same in another unit or form: ${written.join(', ')}`] : []),
    ...(order ? ['blocks or their lines in another order'] : []),
    ...(layout.length > 0 ? [`comments or layout of ${layout.join(', ')}`] : []),
    ...(added + removed > 0 ? [`text between the blocks: ${added} paragraphs in, ${removed} out`] : []),
  ]
}

/** Text that came out of a notebook, in one line that cannot steer a terminal. */
export const plainLine = (text: string): string => printable(text.replaceAll(/\s+/g, ' ').trim())
