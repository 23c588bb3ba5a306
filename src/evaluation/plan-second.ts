import type { Comparison, Second } from '../modules/module.ts'
import { newSlot } from './draft.ts'
import { judge, moduleFault, type Stage } from './module-scope.ts'
import { guardedBy } from './plan-branch.ts'
import { forgetWhereStopped, planWithLimits } from './plan-limits.ts'
import type { Entity, PlannedLine, PlannedSecond } from './plan-types.ts'
import { findIn, newScope } from './scope.ts'
import { givenBy, usedBy } from './used-by.ts'

/** Plans the second method: its steps see the first method's, and what both rest on is read off the two graphs. */
export function planSecond(stage: Stage, second: Second): PlannedSecond | undefined {
  const applies = second.when ? judge(stage, second.when.condition) : { known: true }
  const head = { title: second.title, says: second.says, applies, otherwise: second.when?.otherwise ?? '' }
  if ('known' in applies && !applies.known)
    return { ...head, limits: [], lines: [], leaning: new Set(), comparisons: [], shares: [] }
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
  const alive = newSlot(stage.draft, 1)
  const own: Stage = { ...stage, scope, guards: [...stage.guards, alive], lines: [], second: true }
  const before = new Set(stage.all.values())
  const limits = planWithLimits('slot' in applies ? guardedBy(own, applies.slot, 1) : own, {
    steps: second.steps,
    limits: second.limits ?? [],
    alive,
  })
  forgetWhereStopped(own, { alive, gives: [...stage.all.values()].filter(entity => !before.has(entity)) })
  const comparisons = second.compare.flatMap(compare => {
    const pair = pairOf(own, compare)
    return pair ? [{ compare, ...pair, applies: compare.when ? judge(own, compare.when) : { known: true } }] : []
  })
  const parents = parentsOf([...stage.lines, ...own.lines])
  const leaning = leaningOf(own.lines, { parents, first: new Set(stage.lines.flatMap(givenBy)) })
  return { ...head, limits, lines: own.lines, leaning, comparisons, shares: sharedOf(parents, comparisons) }
}

/** The two answers that are compared; nothing where one is of a choice not made here. A list is our own bug. */
function pairOf(stage: Stage, compare: Comparison): { first: Entity; second: Entity } | undefined {
  const [first, second] = [findIn(stage.scope, compare.first), findIn(stage.scope, compare.second)]
  if (!first || !second) return undefined
  if ('kind' in first && 'kind' in second) return { first, second }
  throw moduleFault(stage, `the second method compares \`${compare.first}\` and \`${compare.second}\`: one is a list`)
}

type Parents = ReadonlyMap<Entity, readonly Entity[]>

/** The checks that rest on something the first method gives. */
function leaningOf(
  lines: readonly PlannedLine[],
  { parents, first }: { parents: Parents; first: ReadonlySet<Entity> },
): ReadonlySet<PlannedLine> {
  const leans = (line: PlannedLine): boolean => [...restsOn(parents, usedBy(line))].some(entity => first.has(entity))
  return new Set(lines.filter(line => line.kind === 'check' && leans(line)))
}

/** What the first and the second answers both rest on, in the block's own order. */
function sharedOf(parents: Parents, pairs: readonly { first: Entity; second: Entity }[]): readonly Entity[] {
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

function parentsOf(lines: readonly PlannedLine[]): Parents {
  const parents = new Map<Entity, Entity[]>()
  for (const line of lines)
    for (const entity of givenBy(line)) parents.set(entity, [...(parents.get(entity) ?? []), ...usedBy(line)])
  return parents
}

function restsOn(parents: Parents, from: readonly Entity[]): ReadonlySet<Entity> {
  const seen = new Set<Entity>()
  const waiting = [...from]
  for (let entity = waiting.pop(); entity; entity = waiting.pop()) {
    if (seen.has(entity)) continue
    seen.add(entity)
    waiting.push(...(parents.get(entity) ?? []))
  }
  return seen
}
