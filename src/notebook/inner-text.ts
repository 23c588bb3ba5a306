import { type Lines, lineBounds, placeOf } from './lines.ts'
import type { Written } from './types.ts'

/**
 * The text inside a fence or the title block, where every character knows its offset in the file. Its lines are the ends of
 * the file's lines, whatever quotes, list indents or tabs stand before them.
 */
export interface InnerText {
  /** Lone CRs are LFs here, which YAML wants; the length is the same. */
  readonly text: string
  readonly lines: Lines
  /** Offset of each line in `text`. */
  readonly starts: readonly number[]
  /** Offset in the file of the end of each of those lines, and in `text`. */
  readonly ends: readonly { readonly inner: number; readonly file: number }[]
}

/** Returns the inner text `value` whose first line is the line `firstLine`, from 0, of the file. */
export function innerText(lines: Lines, value: string, firstLine: number): InnerText {
  const starts: number[] = []
  const ends: { inner: number; file: number }[] = []
  let start = 0
  for (const [index, line] of value.split(/\r\n|\r|\n/).entries()) {
    starts.push(start)
    ends.push({ inner: start + line.length, file: lineBounds(lines, firstLine + index).end })
    start += line.length + (value.startsWith('\r\n', start + line.length) ? 2 : 1)
  }
  return { text: value.replaceAll(/\r(?!\n)/g, '\n'), lines, starts, ends }
}

/** The offset in the file of a character of the inner text. */
function fileOffset(inner: InnerText, offset: number): number {
  const index = inner.starts.findLastIndex(start => start <= offset)
  const end = inner.ends[index]
  return end === undefined ? 0 : Math.max(0, end.file - Math.max(0, end.inner - offset))
}

/** Returns the place in the file of a stretch of the inner text. */
export const innerPlace = (inner: InnerText, from: number, to: number = from) =>
  placeOf(inner.lines, fileOffset(inner, from), fileOffset(inner, to))

/** Returns a stretch of one line of the inner text as the author wrote it, blanks at both ends left out. */
export function innerWritten(inner: InnerText, from: number, to: number): Written {
  const raw = inner.text.slice(from, to)
  const start = from + raw.length - raw.trimStart().length
  const end = Math.max(start, to - (raw.length - raw.trimEnd().length))
  return { text: raw.trim(), place: innerPlace(inner, start, end) }
}
