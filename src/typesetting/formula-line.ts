import type { Element } from 'hast'
import { h } from 'hastscript'
import type { FormulaLine } from '../evaluation/workings.ts'
import { equationHtml } from './equation-html.ts'
import type { Setting } from './setting.ts'
import { stepFrame } from './step-frame.ts'

/** What it means, then symbol = formula = numbers = result, and the lines that use it at the margin. */
export function formulaLine(line: FormulaLine, block: string, setting: Setting): Element {
  const notes = line.fewer ? [h('p.note.fewer', 'Fewer figures: a difference of nearly equal numbers.')] : []
  const { symbol, working, result } = line
  const { html, across } = equationHtml({ symbol, working, result }, setting)
  const users = setting.users(`${block}.${line.name}`)
  return stepFrame({ line, notes, working: [html], users, across }, setting)
}
