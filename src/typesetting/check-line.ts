import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CheckLine } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import { comparisonHtml } from './comparison-html.ts'
import { ratioBar, verdict } from './marks.ts'
import type { Setting } from './setting.ts'
import { stepFrame } from './step-frame.ts'

/** A comparison with symbols and with numbers, then satisfied or not satisfied in words, and the ratio drawn. */
export function checkLine(line: CheckLine, setting: Setting): Element {
  const { html, across } = comparisonHtml(line.working, setting)
  return stepFrame({ line, working: [html, h('p.outcome', outcome(line))], across }, setting)
}

function outcome(line: CheckLine): ElementContent[] {
  return [verdict(line), ...ratioHtml(line)]
}

/** The ratio with its bar; nothing where a check has none. */
export function ratioHtml({ ratio }: CheckLine): ElementContent[] {
  if (!ratio) return []
  return [ratioBar(ratio.value), h('span.ratio', plainNumber(ratio.shown.digits))]
}
