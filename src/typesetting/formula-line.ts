import type { Element } from 'hast'
import { h } from 'hastscript'
import type { FormulaLine } from '../evaluation/workings.ts'
import { equationHtml } from './equation-html.ts'
import type { Setting } from './setting.ts'
import { says, stepFrame } from './step-frame.ts'

/** symbol = formula = numbers = result, with its meaning above and the lines that use it at the margin. */
export function formulaLine(line: FormulaLine, block: string, setting: Setting): Element {
  const few = line.fewer ? [h('p.note', 'Fewer figures: a difference of nearly equal numbers.')] : []
  const equation = equationHtml({ symbol: line.symbol, working: line.working, result: line.result }, setting)
  const users = setting.users(`${block}.${line.name}`)
  return stepFrame({ line, body: [says(line.says), equation, ...few], users }, setting)
}
