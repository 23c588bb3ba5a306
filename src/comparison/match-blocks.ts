import type { Block, Notebook, Statement } from '../notebook/types.ts'
import { entryMeaning, meaningOf, type Scope, statementMeaning } from './meaning.ts'
import { named, type Pair, pairsOf, sameKind } from './pair-blocks.ts'
import { renamedValues } from './renamed-values.ts'
import { noRenames, type Renames } from './renames.ts'

/** So much of the larger block must be the same before one of another name counts as the same block. */
const alike = 0.6

/**
 * Every block of both notebooks, paired by name, and what is left by content: a block whose inputs or lines are for the greater part
 * those of one that is gone was renamed. Values within a pair of blocks are recognised likewise.
 */
export function matchBlocks(
  old: Notebook,
  now: Notebook,
): { readonly pairs: readonly Pair[]; readonly renames: Renames } {
  let renames = renamedBlocks(old, now, noRenames)
  // A rename shows in what refers to it, so each one may let further ones be seen.
  for (let size = -1; size < renames.blocks.size + renames.names.size; ) {
    size = renames.blocks.size + renames.names.size
    renames = renamedValues(old, now, renamedBlocks(old, now, renames))
  }
  return { pairs: pairsOf(old, now, renames), renames }
}

function renamedBlocks(old: Notebook, now: Notebook, renames: Renames): Renames {
  const blocks = new Map(renames.blocks)
  const taken = new Set(blocks.values())
  const gone = old.blocks.filter(({ name }) => !named(now.blocks, name.text) && !taken.has(name.text))
  const come = now.blocks.filter(({ name }) => !named(old.blocks, name.text) && !blocks.has(name.text))
  const scores = come.flatMap(b =>
    gone.filter(a => sameKind(a, b)).map(a => ({ a, b, score: likeness(a, b, renames) })),
  )
  for (const { a, b, score } of scores.sort((x, y) => y.score - x.score)) {
    if (score < alike || taken.has(a.name.text) || blocks.has(b.name.text)) continue
    blocks.set(b.name.text, a.name.text)
    taken.add(a.name.text)
  }
  return { ...renames, blocks }
}

/** The share of the larger block's parts that both have. */
function likeness(old: Block, now: Block, renames: Renames): number {
  const assumed: Renames = { ...renames, blocks: new Map(renames.blocks).set(now.name.text, old.name.text) }
  const a = partsOf(old, { block: old.name.text, renames: noRenames })
  const b = partsOf(now, { block: now.name.text, renames: assumed })
  const most = Math.max(a.length, b.length)
  const left = [...a]
  const shared = b.filter(part => {
    const at = left.indexOf(part)
    if (at >= 0) left.splice(at, 1)
    return at >= 0
  })
  return most === 0 ? 0 : shared.length / most
}

function partsOf(block: Block, scope: Scope): readonly string[] {
  if (block.kind === 'assume')
    return block.assumptions.map(({ name, value }) => `${name.text} = ${meaningOf(value.text, scope)}`)
  if (block.kind === 'work') return block.statements.map(statement => statementPart(statement, scope))
  const inputs = block.inputs.map(({ key, value }) => `${key.text} = ${entryMeaning(value, scope)}`)
  return [`module ${block.module.text}`, ...inputs]
}

const statementPart = (statement: Statement, scope: Scope): string =>
  `${statement.kind === 'check' ? '' : statement.name.text} = ${statementMeaning(statement, scope)}`
