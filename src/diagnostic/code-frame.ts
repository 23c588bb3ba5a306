import type { Place } from './diagnostic.ts'
import { printable } from './printable.ts'
import { characterWidth, textWidth } from './text-width.ts'

/** What is printed of one line of the author's file: the line, and where the carets go under it, in terminal columns. */
export interface CodeFrame {
  readonly line: string
  readonly indent: number
  readonly carets: number
}

const tabStop = 4
const widest = 96
const margin = 24

/**
 * Returns the line on which a place stands, made ready to print: tabs become blanks, characters that steer a terminal are
 * shown, and a long line is cut around the place with `…`. A place past the end of its line gets one caret after it.
 */
export function codeFrame(text: string, place: Place): CodeFrame {
  const start = Math.max(0, place.offset - (place.column - 1))
  const line = text.slice(start, lineEnd(text, start))
  const from = Math.min(place.offset - start, line.length)
  const to = Math.max(from, Math.min(place.end - start, line.length))
  const before = expandTabs(line.slice(0, from), 0)
  const marked = expandTabs(line.slice(from, to), textWidth(before))
  const after = expandTabs(line.slice(to), textWidth(before) + textWidth(marked))
  return cut(before, marked, after)
}

function lineEnd(text: string, start: number): number {
  const found = /[\r\n]/g
  found.lastIndex = start
  return found.exec(text)?.index ?? text.length
}

function expandTabs(text: string, column: number): string {
  let width = column
  let out = ''
  for (const character of text) {
    const shown = character === '\t' ? ' '.repeat(tabStop - (width % tabStop)) : printable(character)
    out += shown
    width += textWidth(shown)
  }
  return out
}

function cut(before: string, marked: string, after: string): CodeFrame {
  const whole = textWidth(before) + textWidth(marked) + textWidth(after) <= widest
  const head = whole ? before : lastColumns(before, margin)
  const middle = whole ? marked : firstColumns(marked, widest - 2 * margin)
  const tail = whole ? after : firstColumns(after, widest - textWidth(head) - textWidth(middle))
  const left = head === before ? '' : '…'
  const right = middle === marked && tail === after ? '' : '…'
  const shownTail = middle === marked ? tail : ''
  return {
    line: (left + head + middle + shownTail + right).trimEnd(),
    indent: left.length + textWidth(head),
    carets: Math.max(1, textWidth(middle)),
  }
}

function firstColumns(text: string, columns: number): string {
  let width = 0
  let out = ''
  for (const character of text) {
    width += characterWidth(character)
    if (width > columns) break
    out += character
  }
  return out
}

function lastColumns(text: string, columns: number): string {
  let width = 0
  let out = ''
  for (const character of [...text.slice(-2 * columns - 2)].reverse()) {
    width += characterWidth(character)
    if (width > columns) break
    out = character + out
  }
  return out
}
