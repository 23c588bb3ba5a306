import { readFormula } from '../formula/read-formula.ts'
import type { Block, Statement, Written } from '../notebook/types.ts'
import type { Change } from './change-types.ts'
import { fullKey } from './renames.ts'

/** A change as it can be put into the old notebook by itself. Keys here are those of the old notebook. */
export interface Edit {
  /** Its id is set when all are known. */
  readonly change: Omit<Change, 'id'>
  /** An assumption whose number alone changed. */
  readonly number?: { readonly key: string; readonly si: number }
  /** The old blocks with this change; absent where only words changed. */
  readonly put?: (blocks: readonly Block[]) => readonly Block[]
  /** Keys, or whole blocks, that come or go with it: what uses them can only be put in together with it. */
  readonly brings: readonly string[]
  /** Keys that its old and its new text use. */
  readonly uses: readonly string[]
  /** Where it enters the working: values by key, checks by their id, `block *` for whatever is planned otherwise in a block. */
  readonly enters: readonly string[]
}

/** The blocks with one of them put otherwise. */
export const inBlock =
  (name: string, put: (block: Block) => Block) =>
  (blocks: readonly Block[]): readonly Block[] =>
    blocks.map(block => (block.name.text === name ? put(block) : block))

/** Full keys of the names in some texts of a block. */
export const usesOf = (written: readonly Written[], block: string): readonly string[] =>
  written.flatMap(({ text }) => {
    const read = readFormula(text)
    return read.ok ? read.formula.names.map(name => fullKey(name, block)) : []
  })

/** Where the lines of a block stand that are planned otherwise than before for a reason outside any formula. */
export const restOf = (block: string): string => `${block} *`

/** The identity of a check of the author's: it has no name, so it is known by what it says. */
export const checkId = (block: string, meaning: string): string => `check ${block}: ${meaning}`

export const statementTexts = (statement: Statement): readonly Written[] =>
  statement.kind === 'table' ? [] : [statement.formula]

/** What two notebooks, or parts of them, differ by. */
export interface Differences {
  readonly edits: readonly Edit[]
  /** Keys of what is the same, written otherwise. */
  readonly written: readonly string[]
  /** True where the same parts stand in another order. */
  readonly order: boolean
  /** New ids of checks that were changed, to their old ones. */
  readonly checks: ReadonlyMap<string, string>
}

export const together = (all: readonly Differences[]): Differences => ({
  edits: all.flatMap(each => each.edits),
  written: all.flatMap(each => each.written),
  order: all.some(each => each.order),
  checks: new Map(all.flatMap(each => [...each.checks])),
})

/** Whether what both lists have stands in another order in one of them. */
export function reordered(old: readonly string[], now: readonly string[]): boolean {
  const a = old.filter(each => now.includes(each))
  const b = now.filter(each => old.includes(each))
  return a.some((each, index) => b[index] !== each)
}
