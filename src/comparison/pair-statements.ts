import type { Statement, WorkBlock } from '../notebook/types.ts'
import { statementMeaning } from './meaning.ts'
import { noRenames } from './renames.ts'

/** A line of the old block with the one it is now; either may be missing. */
export interface Paired {
  readonly a?: Statement
  readonly b?: Statement
}

/** What a line says, both blocks being in the names of the old one. */
export const meaning = (statement: Statement, block: string): string =>
  statementMeaning(statement, { block, renames: noRenames })

/** A line as written, without its name and remark. */
export function rawText(statement: Statement): string {
  if (statement.kind !== 'table') return statement.formula.text
  return statement.points.map(([x, y]) => `${x.text}, ${y.text}`).join('; ')
}

/** Steps and tables by name. */
export function namedPairs(old: WorkBlock, now: WorkBlock): Paired[] {
  const nameOf = (each: Statement): string | undefined => (each.kind === 'check' ? undefined : each.name.text)
  const find = (of: WorkBlock, name: string | undefined): Statement | undefined =>
    name === undefined ? undefined : of.statements.find(each => nameOf(each) === name)
  const come = now.statements.filter(nameOf).map(b => {
    const a = find(old, nameOf(b))
    return a ? { a, b } : { b }
  })
  return [...come, ...old.statements.filter(a => nameOf(a) && !find(now, nameOf(a))).map(a => ({ a }))]
}

/** Checks that say the same; of the others those with the same remark, and those that are left where they are as many. */
export function checkPairs(old: WorkBlock, now: WorkBlock): Paired[] {
  const block = old.name.text
  const isCheck = (each: Statement): boolean => each.kind === 'check'
  const pairs: Paired[] = []
  const gone = old.statements.filter(isCheck)
  let come = now.statements.filter(isCheck)
  const take = (like: (a: Statement, b: Statement) => boolean): void => {
    come = come.filter(b => {
      const at = gone.findIndex(a => like(a, b))
      const [a] = at < 0 ? [] : gone.splice(at, 1)
      if (a) pairs.push({ a, b })
      return !a
    })
  }
  take((a, b) => meaning(a, block) === meaning(b, block))
  take((a, b) => a.remark?.text === b.remark?.text && a.remark !== undefined)
  if (gone.length === come.length) take(() => true)
  return [...pairs, ...come.map(b => ({ b })), ...gone.map(a => ({ a }))]
}
