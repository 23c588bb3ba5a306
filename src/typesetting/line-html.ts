import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Line } from '../evaluation/workings.ts'
import { branchLine } from './branch-line.ts'
import { checkLine } from './check-line.ts'
import { formulaLine } from './formula-line.ts'
import { groups, rowTitle } from './given-table.ts'
import { lookLine } from './look-line.ts'
import { withSeams } from './seams.ts'
import type { Setting } from './setting.ts'
import { isShared, type SetLine, sharedLines, stepsOf } from './shared-lines.ts'
import { solveLine } from './solve-line.ts'

/** One line of working, by its kind. */
export function lineHtml(line: Line, block: string, setting: Setting): Element {
  switch (line.kind) {
    case 'formula':
      return formulaLine(line, block, setting)
    case 'look':
      return lookLine(line, block, setting)
    case 'branch':
      return branchLine(line, setting)
    case 'solve':
      return solveLine(line, block, setting)
    case 'check':
      return checkLine(line, setting)
  }
}

/** Lines in order; a step over the rows of a list under one head, other lines of one row under its label. */
export function linesHtml(lines: readonly Line[], block: string, setting: Setting): Element[] {
  const set: SetLine = (line, how) => lineHtml(line, block, how)
  return runs(stepsOf(lines)).flatMap(run => {
    const [first] = run
    return first && isShared(first) ? sharedLines(first, set, setting) : withSeams(rowByRow(run.flat(), set, setting))
  })
}

/** Steps under one head stand alone; what stands between them is set together. */
function runs(steps: readonly Line[][]): Line[][][] {
  const together: Line[][][] = []
  for (const step of steps) {
    const before = together.at(-1)
    if (before?.[0] && !isShared(before[0]) && !isShared(step)) before.push(step)
    else together.push([step])
  }
  return together
}

function rowByRow(lines: readonly Line[], set: SetLine, setting: Setting): Element[] {
  return groups(lines).flatMap(group => {
    const [first] = group
    if (group.length === 1 && first) return [set(labelled(first), setting)]
    return [...rowHead(group), ...group.map(line => set(line, setting))]
  })
}

/** The only line of a row says whose it is. */
function labelled(line: Line): Line {
  return line.row ? { ...line, says: `${line.says}: ${rowTitle(line.row).replace('Row', 'row')}` } : line
}

function rowHead([first]: readonly Line[]): Element[] {
  return first?.row ? [h('p.row-title', rowTitle(first.row))] : []
}
