import { limits } from './limits.ts'
import { lineBounds, placeOf } from './lines.ts'
import { error, type Reading } from './reading.ts'

const marker = /[ \t]*(?:(>)|([-+*]|\d{1,9}[.)]|\[\^[^\]\s]{1,99}\]:)(?=[ \t]|$))/y
const box = /^[ \t>]*(:{3,})[a-z]/

/**
 * Reports quotes, lists, footnotes and boxes that nest too deeply, and brackets that do. Counted from the marks at the
 * heads of lines, and never less than what a full reading would find.
 */
export function checkNesting(reading: Reading): void {
  const { lines } = reading
  let indents: readonly number[] = []
  let brackets = 0
  let afterBlank = true
  for (const index of lines.starts.keys()) {
    const { start, end } = lineBounds(lines, index)
    const line = lines.text.slice(start, end)
    if (line.trim() === '') {
      brackets = 0
      afterBlank = true
      continue
    }
    const heads = headMarks(line)
    // Without a blank line before it, a line may go on lazily with what is open, whatever its indent.
    const least =
      heads.columns[0] ?? (afterBlank ? line.length - line.trimStart().length + 1 : Number.POSITIVE_INFINITY)
    indents = [...indents.filter(indent => indent < least), ...heads.columns]
    afterBlank = false
    const boxed = (box.exec(line)?.[1]?.length ?? 0) - 3
    brackets = Math.max(0, brackets + bracketBalance(line))
    const nested = indents.length + heads.quotes > limits.nesting || boxed > limits.nesting
    if (nested || brackets > limits.brackets) {
      const says = nested
        ? `Quotes, lists or boxes nest more than ${limits.nesting} deep here, which is the limit`
        : `Brackets nest more than ${limits.brackets} deep in this paragraph, which is the limit`
      error(reading, 'file-too-large', { place: placeOf(lines, start, start + 1), says })
      return
    }
  }
}

/** The marks of quotes and lists at the head of a line, with the columns of those of lists. */
function headMarks(line: string): { quotes: number; columns: readonly number[] } {
  const columns: number[] = []
  let quotes = 0
  marker.lastIndex = 0
  for (let mark = marker.exec(line); mark !== null; mark = marker.exec(line)) {
    if (mark[1] !== undefined) quotes += 1
    else columns.push(mark.index)
    if (quotes + columns.length > limits.nesting) break
  }
  return { quotes, columns }
}

function bracketBalance(line: string): number {
  let balance = 0
  for (const character of line) {
    if (character === '[') balance += 1
    else if (character === ']') balance -= 1
  }
  return balance
}
