import type { Place } from '../diagnostic/diagnostic.ts'
import type { Written } from './types.ts'

/** The author's text with where each of its lines begins. A line ends at CRLF, LF or a lone CR, as in CommonMark. */
export interface Lines {
  readonly text: string
  /** Offsets of the first character of each line; a byte order mark is not a character of the first. */
  readonly starts: readonly number[]
}

/** Returns the lines of a text. */
export function linesOf(text: string): Lines {
  const starts: number[] = [byteOrderMark(text)]
  for (const end of text.matchAll(/\r\n|\r|\n/g)) starts.push(end.index + end[0].length)
  return { text, starts }
}

/** Returns how many characters the byte order mark takes: 1 or 0. */
export const byteOrderMark = (text: string): 0 | 1 => (text.charCodeAt(0) === 0xfeff ? 1 : 0)

/** Returns the index, from 0, of the line an offset stands on. */
export function lineIndex(lines: Lines, offset: number): number {
  let low = 0
  let high = lines.starts.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((lines.starts[middle] ?? 0) <= offset) low = middle
    else high = middle - 1
  }
  return low
}

/** Returns where a line begins and where it ends without its line ending. */
export function lineBounds(lines: Lines, index: number): { readonly start: number; readonly end: number } {
  const start = lines.starts[index] ?? lines.text.length
  let end = lines.starts[index + 1] ?? lines.text.length
  if (lines.starts[index + 1] !== undefined) {
    if (lines.text[end - 1] === '\n') end -= 1
    if (end > start && lines.text[end - 1] === '\r') end -= 1
  }
  return { start, end: Math.max(start, end) }
}

/** Returns the author's own line ending after a line; after the last line of all, that of the line before. */
export function lineEnding(lines: Lines, index: number): string {
  const next = lines.starts[index + 1]
  if (next !== undefined) return lines.text.slice(lineBounds(lines, index).end, next)
  return index > 0 ? lineEnding(lines, index - 1) : '\n'
}

/** Returns the place of a stretch of the text; what goes on past the end of its first line is left out. */
export function placeOf(lines: Lines, from: number, to: number = from): Place {
  const offset = Math.max(byteOrderMark(lines.text), Math.min(from, lines.text.length))
  const index = lineIndex(lines, offset)
  const { start, end } = lineBounds(lines, index)
  return { line: index + 1, column: offset - start + 1, offset, end: Math.max(offset, Math.min(to, end)) }
}

/** Returns a stretch of one line of the text as the author wrote it. */
export const writtenAt = (lines: Lines, from: number, to: number): Written => ({
  text: lines.text.slice(from, to),
  place: placeOf(lines, from, to),
})
