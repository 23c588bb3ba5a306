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
      heads.columns[0] ?? (afterBlank ? width(/^[ \t]*/.exec(line)?.[0] ?? '') + 1 : Number.POSITIVE_INFINITY)
    indents = [...indents.filter(indent => indent < least), ...heads.columns]
    afterBlank = false
    const boxed = (box.exec(line)?.[1]?.length ?? 0) - 3
    const opened = openBrackets(line, brackets)
    brackets = opened.after
    const nested = indents.length + heads.quotes > limits.nesting || boxed > limits.nesting
    if (nested || opened.most > limits.brackets) {
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
    else columns.push(width(line.slice(0, marker.lastIndex - mark[0].trimStart().length)))
    if (quotes + columns.length > limits.nesting) break
  }
  return { quotes, columns }
}

/** Columns up to here, a tab as four: more than it can take is on the safe side. */
const width = (text: string): number => text.length + 3 * (text.match(/\t/g)?.length ?? 0)

/** How many brackets are open at most in a line, and after it. */
function openBrackets(line: string, before: number): { most: number; after: number } {
  let open = before
  let most = before
  for (const { 0: bracket } of line.matchAll(/[[\]]/g)) {
    open = Math.max(0, open + (bracket === '[' ? 1 : -1))
    most = Math.max(most, open)
  }
  return { most, after: open }
}
