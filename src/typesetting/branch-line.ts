import type { Element } from 'hast'
import { h } from 'hastscript'
import type { BranchLine } from '../evaluation/workings.ts'
import { comparisonHtml } from './comparison-html.ts'
import { prose } from './prose.ts'
import type { Setting } from './setting.ts'
import { says, stepFrame } from './step-frame.ts'

/** A condition with its numbers, and whether it holds: the lines that follow are for that case. */
export function branchLine(line: BranchLine, setting: Setting): Element {
  const verdict = h('b.verdict.branch', line.holds ? 'holds' : 'does not hold')
  if (line.working) {
    const condition = comparisonHtml(line.working, setting, [h('span.that-is', ' '), verdict])
    return stepFrame({ line, body: [says(line.says), condition] }, setting)
  }
  const because = h('p.chosen', [verdict, h('span.because', [': ', ...prose(line.because ?? '')])])
  return stepFrame({ line, body: [says(line.says), because] }, setting)
}
