import { linesOf } from '../evaluation/block-lines.ts'
import type { Plan, PlannedCalc, PlannedLine } from '../evaluation/plan-types.ts'
import type { Block } from '../notebook/types.ts'
import { blockInOldNames } from './block-in-old-names.ts'
import { isAsBefore, matchRows, type RowMatch, rowsIn } from './match-rows.ts'
import type { Pair } from './pair-blocks.ts'
import type { Renames } from './renames.ts'

/** Rows of lists that are not at the index they had, by block and list. */
export type RowMatches = ReadonlyMap<string, RowMatch>

export const noRows: RowMatches = new Map()

const listKey = (block: string, list: string): string => `${block}.${list}`

/** What a value of a row is called by both notebooks: by its old row, or as one that came. */
export const rowKey = (key: string, was: number | undefined, index: number): string =>
  was === undefined ? `${key}_${index + 1} new` : `${key}_${was + 1}`

/** The rows of every list that was rearranged, by the block's new name. */
export const movedRows = (pairs: readonly Pair[], renames: Renames): RowMatches =>
  matches(
    pairs.map(({ old, now }) => ({ old, now: now && blockInOldNames(now, renames), name: now?.name.text })),
    matchRows,
  )

/** The same of the old blocks with changes put into them: a row that was there is known by its place in the old file. */
export const keptRows = (old: readonly Block[], now: readonly Block[]): RowMatches =>
  matches(
    now.map(block => ({
      old: old.find(({ name }) => name.text === block.name.text),
      now: block,
      name: block.name.text,
    })),
    (before, after) =>
      after.map(row => {
        const at = before.findIndex(each => placeOf(each) === placeOf(row))
        return at < 0 ? undefined : at
      }),
  )

type Rows = NonNullable<ReturnType<typeof rowsIn>>

const placeOf = ({ place }: Rows[number]): unknown => place

function matches(
  pairs: readonly {
    readonly old: Block | undefined
    readonly now: Block | undefined
    readonly name: string | undefined
  }[],
  match: (old: Rows, now: Rows, block: string) => RowMatch,
): RowMatches {
  const found = new Map<string, RowMatch>()
  for (const { old, now, name = '' } of pairs) {
    if (old?.kind !== 'calc' || now?.kind !== 'calc' || old.module.text !== now.module.text) continue
    for (const { key, value } of now.inputs) {
      const was = old.inputs.find(each => each.key.text === key.text)?.value
      const [before, after] = [rowsIn(was), rowsIn(value)]
      if (!before || !after || before === after) continue
      const rows = match(before, after, old.name.text)
      if (!isAsBefore(rows, before.length)) found.set(listKey(name, key.text), rows)
    }
  }
  return found
}

/** The index that a row of the plan had, as a text; of a row that came a text of its own. */
export function rowIndex(rows: RowMatches, block: string, { list, index }: { list: string; index: number }): string {
  const match = rows.get(listKey(block, list))
  if (!match) return String(index + 1)
  const was = match[index]
  return was === undefined ? `${index + 1} new` : String(was + 1)
}

/** Shared keys of all values that stand in rearranged rows, by their own keys. `head` gives a block's old name. */
export function rowKeys(plan: Plan, rows: RowMatches, head: (block: string) => string): ReadonlyMap<string, string> {
  const keys = new Map<string, string>()
  plan.blocks.forEach((block, at) => {
    const name = plan.notebook.blocks[at]?.name.text ?? ''
    if (block?.kind !== 'calc') return
    for (const [list] of block.rows) {
      const match = rows.get(listKey(name, list))
      if (!match) continue
      for (const field of namesIn(block, list))
        match.forEach((was, index) => {
          keys.set(`${name}.${field}_${index + 1}`, rowKey(`${head(name)}.${field}`, was, index))
        })
    }
  })
  return keys
}

/** Names that every row of a list has, or may have: its fields and what its steps give. */
function namesIn(block: PlannedCalc, list: string): ReadonlySet<string> {
  const input = block.module.inputs[list]
  const fields = input?.kind === 'list' ? Object.keys(input.fields) : []
  const given = linesOf<PlannedLine>(block).flatMap(line => (line.row?.list === list ? namesOf(line) : []))
  return new Set([...fields, ...given])
}

function namesOf(line: PlannedLine): readonly string[] {
  const entities =
    line.kind === 'formula' || line.kind === 'look'
      ? [line.gives]
      : line.kind === 'solve'
        ? line.gives.map(({ entity }) => entity)
        : []
  return entities.map(({ key }) => key.slice(key.indexOf('.') + 1).replace(/_\d+$/, ''))
}
