import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Line } from '../evaluation/workings.ts'
import { branchLine } from './branch-line.ts'
import { checkLine } from './check-line.ts'
import { formulaLine } from './formula-line.ts'
import { groups, rowTitle } from './given-table.ts'
import { lookLine } from './look-line.ts'
import type { Setting } from './setting.ts'
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

/** Lines in order; those of one row of a list under its label. */
export function linesHtml(lines: readonly Line[], block: string, setting: Setting): Element[] {
  return groups(lines).flatMap(group => {
    const [first] = group
    if (group.length === 1 && first) return [lineHtml(labelled(first), block, setting)]
    return [...rowHead(group), ...group.map(line => lineHtml(line, block, setting))]
  })
}

/** The only line of a row says whose it is. */
function labelled(line: Line): Line {
  return line.row ? { ...line, says: `${line.says}: ${rowTitle(line.row).replace('Row', 'row')}` } : line
}

function rowHead([first]: readonly Line[]): Element[] {
  return first?.row ? [h('p.row-title', rowTitle(first.row))] : []
}
