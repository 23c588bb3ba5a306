import { secondLinesOf } from '../evaluation/block-lines.ts'
import type { Plan, PlannedLine } from '../evaluation/plan-types.ts'
import { checkId } from './edit.ts'
import { meaningOf } from './meaning.ts'
import { oldKey, type Renames } from './renames.ts'
import { type RowMatches, rowIndex, rowKeys } from './row-names.ts'

/** Identities that both notebooks share: keys in the old names, and lines by what they give, or by what they say. */
export interface Naming {
  readonly key: (key: string) => string
  readonly lineId: (line: PlannedLine) => string
  /** The block of a line in its own notebook. */
  readonly blockOf: (line: PlannedLine) => string
}

/** `checks` are the author's checks that were changed: the new identity to the old one. */
export function namingOf(
  plan: Plan,
  about: { renames: Renames; rows: RowMatches; checks: ReadonlyMap<string, string> },
): Naming {
  const { renames, rows, checks } = about
  const moved = rowKeys(plan, rows, block => oldKey(renames, block))
  const shared = (key: string): string => moved.get(key) ?? oldKey(renames, key)
  const ids = new Map<PlannedLine, string>()
  const blocks = new Map<PlannedLine, string>()
  const repeats = new Map<string, number>()
  plan.blocks.forEach((block, index) => {
    if (!block || block.kind === 'assume') return
    const name = plan.notebook.blocks[index]?.name.text ?? ''
    const old = oldKey(renames, name)
    const idOf = (line: PlannedLine, order: number): string => {
      if (line.kind === 'check' && block.kind === 'work') {
        const id = checkId(old, meaningOf(line.formula.text, { block: name, renames }))
        return checks.get(id) ?? id
      }
      return `line ${shared(`${name}.${nameIn(line, { order, block: name, rows })}`)}`
    }
    const add = (lines: readonly PlannedLine[], role: string): void => {
      let branches = 0
      for (const line of lines) {
        if (line.kind === 'branch') branches += 1
        const id = role + idOf(line, branches)
        const count = (repeats.get(id) ?? 0) + 1
        repeats.set(id, count)
        // Both sides of a branch may give one name; a check may be written twice.
        ids.set(line, count > 1 && line.kind === 'check' ? `${id} #${count}` : id)
        blocks.set(line, name)
      }
    }
    add(block.lines, '')
    add(secondLinesOf<PlannedLine>(block), 'second ')
  })
  const find = (from: ReadonlyMap<PlannedLine, string>, line: PlannedLine): string => {
    const found = from.get(line)
    if (found === undefined) throw new Error('a line stands in a block')
    return found
  }
  return { key: shared, lineId: line => find(ids, line), blockOf: line => find(blocks, line) }
}

/** What a line is called within its block; a row's check or branch with the row's number. */
function nameIn(line: PlannedLine, { order, block, rows }: { order: number; block: string; rows: RowMatches }): string {
  const row = line.row ? `_${rowIndex(rows, block, line.row)}` : ''
  switch (line.kind) {
    case 'formula':
    case 'look':
      return line.gives.key.slice(line.gives.key.indexOf('.') + 1)
    case 'solve':
      return line.gives.map(({ entity }) => entity.name).join(' ')
    case 'check':
      return `check ${line.name}${row}`
    case 'branch':
      return `branch ${line.says || order}${row}`
  }
}
