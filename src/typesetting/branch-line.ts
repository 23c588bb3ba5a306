import type { Element } from 'hast'
import { h } from 'hastscript'
import type { BranchLine } from '../evaluation/workings.ts'
import { comparisonHtml } from './equation-html.ts'
import type { Setting } from './setting.ts'
import { says, stepFrame } from './step-frame.ts'

/** A condition, its numbers, and which way the working goes on because of it. */
export function branchLine(line: BranchLine, setting: Setting): Element {
  const condition = line.working ? [comparisonHtml(line.working, setting)] : []
  const because = line.because ? [h('p.because', line.because)] : []
  const outcome = h('p.outcome', [
    h('span.verdict.branch', [h('b', line.holds ? 'holds' : 'does not hold')]),
    ' ',
    h('span', way(line)),
  ])
  return stepFrame({ line, body: [says(line.says), ...condition, ...because, outcome] }, setting)
}

function way(line: BranchLine): string {
  return line.holds ? 'and the lines that follow are for this case' : 'and the lines that follow are for the other case'
}
