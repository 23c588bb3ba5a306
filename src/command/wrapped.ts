import { printable } from '../diagnostic/printable.ts'
import { textWidth } from '../diagnostic/text-width.ts'

/** The width that everything printed to a terminal is made for. */
export const pageWidth = 100

/**
 * Pieces of text in lines of at most `pageWidth` columns: a piece that does not fit beside the one before begins a line, and one that
 * fits on no line is parted between words. `first` stands before the first line, `rest` before the others. Nothing in it can steer the terminal.
 */
export function wrapped(pieces: readonly string[], { first = '', rest = '' } = {}): string[] {
  const lines: string[] = []
  let line = ''
  const before = (): string => (lines.length === 0 ? first : rest)
  const room = (): number => pageWidth - textWidth(before())
  const add = (text: string, gap: string): void => {
    if (line === '') line = text
    else if (textWidth(`${line}${gap}${text}`) <= room()) line += gap + text
    else {
      lines.push(before() + line)
      line = text
    }
  }
  for (const piece of pieces.map(printable)) {
    if (textWidth(piece) <= room()) add(piece, '  ')
    else for (const [index, word] of piece.split(' ').entries()) add(word, index === 0 ? '  ' : ' ')
  }
  if (line !== '') lines.push(before() + line)
  return lines
}
