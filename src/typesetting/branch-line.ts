import type { Element } from 'hast'
import { h } from 'hastscript'
import type { BranchLine } from '../evaluation/workings.ts'
import { comparisonHtml } from './comparison-html.ts'
import { prose, sentenceCase, textNode } from './prose.ts'
import type { Setting } from './setting.ts'
import { stepFrame } from './step-frame.ts'

/** A condition with its numbers and whether it holds, or what the author chose: the lines that follow are for that case. */
export function branchLine(line: BranchLine, setting: Setting): Element {
  const verdict = h('b.verdict.branch', line.holds ? 'holds' : 'does not hold')
  if (line.working) {
    const { html, across } = comparisonHtml(line.working, setting, [textNode(' '), verdict])
    return stepFrame({ line, working: [html], across }, setting)
  }
  const chosen = sentenceCase(line.because ?? '')
  const because = h('p.chosen', [h('span.because', prose(chosen, setting)), ...(line.holds ? [] : ['; ', verdict])])
  return stepFrame({ line, working: [because] }, setting)
}
