import type { Element } from 'hast'
import { h } from 'hastscript'
import type { FormulaLine, Line, LookLine } from '../evaluation/workings.ts'
import { symbolsHtml } from './equation-html.ts'
import { tableNote } from './look-line.ts'
import { runningLine } from './running-line.ts'
import { withSeams } from './seams.ts'
import type { Setting } from './setting.ts'
import { sharedHead } from './step-frame.ts'

/** How one line is set. */
export type SetLine = (line: Line, setting: Setting) => Element

/** Neighbouring lines that share a number but for its letter: one step over the rows of a list. */
export function stepsOf(lines: readonly Line[]): Line[][] {
  const steps: Line[][] = []
  for (const line of lines) {
    const before = steps.at(-1)
    if (before?.[0] && isLettered(line) && bare(before[0]) === bare(line)) before.push(line)
    else steps.push([line])
  }
  return steps
}

const isLettered = ({ number }: Line): boolean => /[a-z]$/.test(number)
const bare = ({ number }: Line): string => number.replace(/[a-z]+$/, '')

/** Whether rows of a step are short enough to stand under one head. */
export const isShared = (lines: readonly Line[]): boolean =>
  lines.length > 1 && lines.every(({ kind }) => kind === 'formula' || kind === 'look' || kind === 'branch')

/** One step over several rows: its words and symbols once, then a line for each row with its numbers. */
export function sharedLines(lines: readonly Line[], set: SetLine, setting: Setting): Element[] {
  const [first] = lines
  if (!first) return []
  const { head, symbols } = headOf(first, lines, setting)
  const short = lines.every(({ kind, row }) => kind === 'formula' && row?.made)
  const rows = lines.map(line => set(line, { ...setting, row: { symbols, short } }))
  return [h('div.shared', [head, ...withSeams(rows)])]
}

function headOf(line: Line, lines: readonly Line[], setting: Setting): { head: Element; symbols: boolean } {
  const running = runningLine(lines.filter((each): each is FormulaLine => each.kind === 'formula'))
  if (running) {
    const { html, across } = symbolsHtml(running, setting)
    return { head: sharedHead({ line, working: [html], across }, setting), symbols: true }
  }
  const notes = line.kind === 'look' ? [tableNote(line as LookLine, setting)] : []
  return { head: sharedHead({ line, notes, working: [] }, setting), symbols: false }
}
