import type { Block, Notebook, Statement } from '../notebook/types.ts'
import { entryMeaning, meaningOf, type Scope } from './meaning.ts'
import { noRenames, oldKey, type Renames } from './renames.ts'

/** A block of the new notebook with the one it was; either may be missing. */
export interface Pair {
  readonly old?: Block
  readonly now?: Block
}

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

const sameKind = (a: Block, b: Block): boolean => a.kind === b.kind
const named = (blocks: readonly Block[], name: string): Block | undefined =>
  blocks.find(each => each.name.text === name)

function pairsOf(old: Notebook, now: Notebook, renames: Renames): Pair[] {
  const pairs: Pair[] = now.blocks.map(block => {
    const was = named(old.blocks, oldKey(renames, block.name.text))
    return was && sameKind(was, block) ? { old: was, now: block } : { now: block }
  })
  const kept = new Set(pairs.map(pair => pair.old))
  return [...pairs, ...old.blocks.filter(block => !kept.has(block)).map(block => ({ old: block }))]
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

/** What a line of a work block says, its name and remark left aside. */
export function statementMeaning(statement: Statement, scope: Scope): string {
  if (statement.kind !== 'table') return meaningOf(statement.formula.text, scope)
  return statement.points.map(([x, y]) => `${meaningOf(x.text, scope)}, ${meaningOf(y.text, scope)}`).join('; ')
}

function renamedValues(old: Notebook, now: Notebook, renames: Renames): Renames {
  const names = new Map(renames.names)
  for (const pair of pairsOf(old, now, renames)) {
    if (!pair.old || !pair.now) continue
    const [from, to] = [pair.old.name.text, pair.now.name.text]
    const a = valuesOf(pair.old, { block: from, renames: noRenames })
    const b = valuesOf(pair.now, { block: to, renames: { ...renames, names } })
    const gone = [...a].filter(([name]) => !b.has(name) && ![...names.values()].includes(`${from}.${name}`))
    const come = [...b].filter(([name]) => !a.has(name) && !names.has(`${to}.${name}`))
    for (const [name, means] of come) {
      const like = gone.filter(([, other]) => other === means)
      const rivals = come.filter(([, other]) => other === means)
      if (like.length === 1 && rivals.length === 1) names.set(`${to}.${name}`, `${from}.${like[0]?.[0]}`)
    }
  }
  return { ...renames, names }
}

/** Names that an author chose, with what they stand for: an assumption's value and basis, a step's formula. */
function valuesOf(block: Block, scope: Scope): ReadonlyMap<string, string> {
  if (block.kind === 'assume')
    return new Map(
      block.assumptions.map(({ name, value, basis }) => [
        name.text,
        `${meaningOf(value.text, scope)} by ${basis?.text ?? ''}`,
      ]),
    )
  if (block.kind === 'calc') return new Map()
  return new Map(
    block.statements.flatMap(statement =>
      statement.kind === 'check' ? [] : [[statement.name.text, statementMeaning(statement, scope)] as const],
    ),
  )
}
