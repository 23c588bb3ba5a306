import { type Lines, writtenAt } from './lines.ts'
import type { Written } from './types.ts'

export interface Stretch {
  readonly start: number
  readonly end: number
}

/** The pieces of a reference in a sentence, as typed: `:kind[label]{braces}`. */
export interface MentionParts {
  readonly whole: Written
  readonly kind: string
  /** Without the blanks at its ends. Absent where there are no square brackets. */
  readonly label?: Written
  /** With the braces; `from` is their offset in the file. */
  readonly braces?: { readonly text: string; readonly from: number }
  /** The character after it. */
  readonly next: string
}

/** Returns the pieces of the reference that stands at a stretch of the author's text. */
export function mentionParts({ start, end }: Stretch, lines: Lines): MentionParts {
  const text = lines.text.slice(start, end)
  const [, kind = '', bracketed, braced] = /^:([a-z]*)(\[.*?\])?(\{.*\})?$/s.exec(text) ?? []
  const from = start + kind.length + 1
  const label =
    bracketed === undefined ? undefined : trimmedAt(lines, { start: from + 1, end: from + bracketed.length - 1 })
  return {
    whole: writtenAt(lines, start, end),
    kind,
    next: lines.text[end] ?? '',
    ...(label !== undefined && { label }),
    ...(braced !== undefined && { braces: { text: braced, from: end - braced.length } }),
  }
}

function trimmedAt(lines: Lines, { start, end }: Stretch): Written {
  const raw = lines.text.slice(start, end)
  const from = start + raw.length - raw.trimStart().length
  return writtenAt(lines, from, from + raw.trim().length)
}
