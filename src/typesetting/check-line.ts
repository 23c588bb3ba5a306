import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CheckLine } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import { comparisonHtml } from './comparison-html.ts'
import { ratioBar, verdict } from './marks.ts'
import type { Setting } from './setting.ts'
import { says, stepFrame } from './step-frame.ts'

/** A comparison with symbols and with numbers, then satisfied or not satisfied in words, and the ratio drawn. */
export function checkLine(line: CheckLine, setting: Setting): Element {
  const body = [says(line.says), comparisonHtml(line.working, setting), h('p.outcome', outcome(line))]
  return stepFrame({ line, body }, setting)
}

function outcome(line: CheckLine): ElementContent[] {
  return [verdict(line.satisfied), ...ratioHtml(line)]
}

/** The ratio with its bar; nothing where a check has none. */
export function ratioHtml({ ratio }: CheckLine): ElementContent[] {
  if (!ratio) return []
  return [h('span.ratio-label', 'ratio'), ratioBar(ratio.value), h('span.ratio', plainNumber(ratio.shown.digits))]
}
