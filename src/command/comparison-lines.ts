import { textWidth } from '../diagnostic/text-width.ts'
import { plainLine } from './comparison-words.ts'

/** Columns of the terminal that it is made for. */
export const wide = 100

/** Of the first of two columns. */
export const nameWidth = 28

/** A name and what is said of it, in two columns; a long text goes on below. */
export function named(name: string, said: string): string[] {
  const head = `  ${padded(plainLine(name), nameWidth)}  `
  return wrapped([said], head)
}

/** Rows in columns with who moved them at the end; what would pass the edge goes below. */
export function table(rows: readonly { readonly cells: readonly string[]; readonly by: string }[]): string[] {
  const widths = (rows[0]?.cells ?? []).map((_, index) =>
    Math.max(...rows.map(({ cells }) => textWidth(cells[index] ?? ''))),
  )
  return rows.flatMap(({ cells, by }) => {
    const head = `  ${cells.map((cell, index) => padded(cell, widths[index] ?? 0)).join('  ')}`
    const one = `${head}  ${by}`.trimEnd()
    return textWidth(one) <= wide ? [one] : [head.trimEnd(), ...wrapped([by], ' '.repeat(12))]
  })
}

const padded = (text: string, width: number): string => text + ' '.repeat(Math.max(0, width - textWidth(text)))

/** Cut to a width, with a sign that it was. */
export function fitted(text: string, width: number): string {
  if (textWidth(text) <= width) return text
  let kept = ''
  for (const character of text) {
    if (textWidth(kept + character) > width - 1) break
    kept += character
  }
  return `${kept.trimEnd()}…`
}

/** Texts one below the other, each broken at blanks; `first` stands before the first line, `rest` (as wide as `first`) before the others. */
export function wrapped(texts: readonly string[], first = '', rest = ' '.repeat(textWidth(first))): string[] {
  const lines: string[] = []
  for (const text of texts) {
    let line = lines.length === 0 ? first : rest
    let isEmpty = true
    for (const word of text.split(/(?<=\S) (?=\S)/)) {
      if (!isEmpty && textWidth(line) + 1 + textWidth(word) > wide) {
        lines.push(line.trimEnd())
        line = rest
        isEmpty = true
      }
      line += isEmpty ? word : ` ${word}`
      isEmpty = false
    }
    lines.push(line.trimEnd())
  }
  return lines
}
