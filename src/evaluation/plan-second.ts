import type { Second } from '../modules/module.ts'
import { findIn, judge, moduleFault, newScope, type Stage } from './module-scope.ts'
import { guardedBy, planSteps } from './plan-steps.ts'
import type { Entity, PlannedLine, PlannedSecond } from './plan-types.ts'
import { usedBy } from './used-by.ts'

/** Plans the second method: its steps see the first method's, and what both rest on is read off the two graphs. */
export function planSecond(stage: Stage, second: Second): PlannedSecond | undefined {
  const applies = second.when ? judge(stage, second.when.condition) : { known: true }
  const head = { title: second.title, says: second.says, applies, otherwise: second.when?.otherwise ?? '' }
  if ('known' in applies && !applies.known) return { ...head, lines: [], comparisons: [], shares: [] }
  const scope = newScope(stage.scope)
  for (const [list, rows] of stage.scope.lists) {
    let before: ReturnType<typeof newScope> | undefined
    scope.lists.set(
      list,
      rows.map(({ scope: row, row: at }) => {
        before = newScope(row, before)
        return { scope: before, row: at }
      }),
    )
  }
  const own: Stage = { ...stage, scope, lines: [], second: true }
  planSteps('slot' in applies ? guardedBy(own, applies.slot, 1) : own, second.steps)
  const known = (name: string): Entity => {
    const found = findIn(scope, name)
    if (!found || !('kind' in found))
      throw moduleFault(stage, `the second method compares \`${name}\`, which nothing gives`)
    return found
  }
  const comparisons = second.compare
    .filter(compare => findIn(scope, compare.first) !== undefined && findIn(scope, compare.second) !== undefined)
    .map(compare => ({
      compare,
      first: known(compare.first),
      second: known(compare.second),
      applies: compare.when ? judge(own, compare.when) : { known: true },
    }))
  return { ...head, lines: own.lines, comparisons, shares: sharedOf([...stage.lines, ...own.lines], comparisons) }
}

/** What the first and the second answers both rest on, in the block's own order. */
function sharedOf(
  lines: readonly PlannedLine[],
  pairs: readonly { first: Entity; second: Entity }[],
): readonly Entity[] {
  const parents = parentsOf(lines)
  const firsts = restsOn(
    parents,
    pairs.map(pair => pair.first),
  )
  const seconds = restsOn(
    parents,
    pairs.map(pair => pair.second),
  )
  return [...firsts].filter(entity => seconds.has(entity)).sort((a, b) => a.slot - b.slot)
}

function parentsOf(lines: readonly PlannedLine[]): ReadonlyMap<Entity, readonly Entity[]> {
  const parents = new Map<Entity, Entity[]>()
  const add = (entity: Entity, from: readonly Entity[]): void =>
    void parents.set(entity, [...(parents.get(entity) ?? []), ...from])
  for (const line of lines) {
    if (line.kind === 'formula' || line.kind === 'look') add(line.gives, usedBy(line))
    else if (line.kind === 'solve') for (const { entity } of line.gives) add(entity, usedBy(line))
  }
  return parents
}

function restsOn(parents: ReadonlyMap<Entity, readonly Entity[]>, from: readonly Entity[]): ReadonlySet<Entity> {
  const seen = new Set<Entity>()
  const waiting = [...from]
  for (let entity = waiting.pop(); entity; entity = waiting.pop()) {
    if (seen.has(entity)) continue
    seen.add(entity)
    waiting.push(...(parents.get(entity) ?? []))
  }
  return seen
}
