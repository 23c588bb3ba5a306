import type { Block, Notebook } from '../notebook/types.ts'
import { usesText } from './match-uses.ts'
import { meaningOf, type Scope, statementMeaning } from './meaning.ts'
import { pairsOf } from './pair-blocks.ts'
import { noRenames, type Renames } from './renames.ts'

/**
 * The renames with those of values: of what went and came within a pair of blocks, what says the same; and of assumptions that say something
 * else now those that are used where and as the old one was.
 */
export function renamedValues(old: Notebook, now: Notebook, renames: Renames): Renames {
  const names = new Map(renames.names)
  for (const pair of pairsOf(old, now, renames)) {
    if (!pair.old || !pair.now) continue
    const [from, to] = [pair.old.name.text, pair.now.name.text]
    const unmatched = (): { gone: Told[]; come: Told[] } => {
      const a = valuesOf(pair.old as Block, { block: from, renames: noRenames })
      const b = valuesOf(pair.now as Block, { block: to, renames: { ...renames, names } })
      return {
        gone: [...a].filter(([name]) => !b.has(name) && ![...names.values()].includes(`${from}.${name}`)),
        come: [...b].filter(([name]) => !a.has(name) && !names.has(`${to}.${name}`)),
      }
    }
    const keep = (pairs: readonly (readonly [string, string])[]): void => {
      for (const [was, is] of pairs) names.set(`${to}.${is}`, `${from}.${was}`)
    }
    const { gone, come } = unmatched()
    keep(onlyPairs(gone, come))
    if (pair.old.kind !== 'assume') continue
    const left = unmatched()
    if (left.gone.length === 0 || left.come.length === 0) continue
    const used = (values: Told[], of: (name: string) => string): Told[] => values.map(([name]) => [name, of(name)])
    keep(
      onlyPairs(
        used(left.gone, name => usesText(old, `${from}.${name}`, noRenames)),
        used(left.come, name => usesText(now, `${to}.${name}`, { ...renames, names })),
      ),
    )
  }
  return { ...renames, names }
}

/** A name with what is told of it. */
type Told = readonly [name: string, says: string]

/** Names of which the same is told, where it is told of one alone on either side, and of something. */
function onlyPairs(gone: readonly Told[], come: readonly Told[]): (readonly [string, string])[] {
  return come.flatMap(([name, says]) => {
    const [like, ...others] = gone.filter(([, other]) => other === says)
    const rivals = come.filter(([, other]) => other === says)
    return like && says !== '' && others.length === 0 && rivals.length === 1 ? [[like[0], name] as const] : []
  })
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
