import { formulaText } from '../formula/formula-text.ts'
import { linesOf } from './block-lines.ts'
import type { BlockWorking, Line } from './workings.ts'

/**
 * The lines of a block by a key that stays when numbers change and lines are added round it: the name of a value or of a module's check,
 * the formula of the author's check, the remark of a branch. Of two that would share a key the second takes ` (2)`.
 */
export function keyedLines(block: Exclude<BlockWorking, { kind: 'assume' }>): ReadonlyMap<string, Line> {
  const keyed = new Map<string, Line>()
  for (const line of linesOf<Line>(block)) {
    const key = keyOf(line, block.kind)
    let free = key
    for (let count = 2; keyed.has(free); count += 1) free = `${key} (${count})`
    keyed.set(free, line)
  }
  return keyed
}

function keyOf(line: Line, kind: 'calc' | 'work'): string {
  if (line.kind === 'solve') return line.gives.map(({ name }) => name).join(', ')
  if (line.kind === 'branch') return line.says
  return line.kind === 'check' && kind === 'work' ? formulaText(line.working.formula) : line.name
}
