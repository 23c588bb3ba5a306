import { formulaText } from '../formula/formula-text.ts'
import { readFormula } from '../formula/read-formula.ts'
import type { Formula } from '../formula/types.ts'
import { withNames } from '../formula/with-names.ts'

/** New names to old ones: blocks by name, values by full key. What keeps its name is not in it. */
export interface Renames {
  readonly blocks: ReadonlyMap<string, string>
  readonly names: ReadonlyMap<string, string>
}

export const noRenames: Renames = { blocks: new Map(), names: new Map() }

/** The old key of a new one: `slab.M` is `roof.M` where the block was called `roof`. */
export function oldKey({ blocks, names }: Renames, key: string): string {
  const own = names.get(key)
  if (own !== undefined) return own
  const [block, name] = cut(key)
  return `${blocks.get(block) ?? block}${name}`
}

/** Block and the rest, its dot included; a key without a dot is a block. */
function cut(key: string): readonly [string, string] {
  const dot = key.indexOf('.')
  return dot < 0 ? [key, ''] : [key.slice(0, dot), key.slice(dot)]
}

export const fullKey = (name: string, block: string): string => (name.includes('.') ? name : `${block}.${name}`)

/** A text of the new notebook in the names of the old one; unchanged, to the character, where it has no renamed name. */
export function inOldNames(text: string, { block, renames }: { block: string; renames: Renames }): string {
  const read = readFormula(text)
  if (!read.ok) return text
  const nameOf = (name: string): string => {
    const key = fullKey(name, block)
    const old = oldKey(renames, key)
    if (old === key) return name
    const home = `${renames.blocks.get(block) ?? block}.`
    return !name.includes('.') && old.startsWith(home) ? old.slice(home.length) : old
  }
  if (read.formula.names.every(name => nameOf(name) === name)) return text
  const formula: Formula = { ...read.formula, tree: withNames(read.formula.tree, nameOf) }
  return formulaText(formula)
}
