import type { Numbering } from './anchors.ts'
import { linesOf } from './block-lines.ts'
import type { Results } from './evaluate.ts'
import type { Entity, PlannedBlock, PlannedLine } from './plan-types.ts'
import { tableId, traceSpots } from './trace-spots.ts'
import type { Spot } from './trace-types.ts'
import { givenBy, tablesUsedBy, usedBy } from './used-by.ts'
import type { Line } from './workings.ts'

/** What the spots of lines are made from. */
export interface LineContext {
  readonly results: Results
  readonly numbering: Numbering
  /** The printed lines by anchor. */
  readonly printed: ReadonlyMap<string, Line>
}

/** The lines of one block: each that was reached, and values of lines that were not. */
export function lineSpots(context: LineContext, block: PlannedBlock): Spot[] {
  const lines: readonly PlannedLine[] = linesOf(block)
  const branches = branchesOf(context, lines)
  const reached = lines.flatMap(line => {
    const origin = context.numbering.lines.get(line)
    const printed = origin && context.printed.get(origin.id)
    return printed ? traceSpots(line, printed, { id: origin.id, restsOn: restsOf(line, branches) }) : []
  })
  const known = new Set(reached.map(({ id }) => id))
  const missed = lines.flatMap(line =>
    givenBy(line).flatMap(entity => (known.has(entity.key) ? [] : [missedSpot(line, entity)])),
  )
  return [...reached, ...missed]
}

/** By guard: the branch that a line stands under. */
function branchesOf({ numbering }: LineContext, lines: readonly PlannedLine[]): ReadonlyMap<number, string> {
  const branches = new Map<number, string>()
  for (const line of lines) {
    const origin = numbering.lines.get(line)
    if (line.kind !== 'branch' || !origin) continue
    for (const guard of line.test?.sides ?? []) branches.set(guard, origin.id)
  }
  return branches
}

function restsOf(line: PlannedLine, branches: ReadonlyMap<number, string>): string[] {
  const picks = line.kind === 'look' ? line.picks : line.kind === 'branch' && line.chosen ? [line.chosen.by] : []
  return [
    ...[...usedBy(line), ...tablesUsedBy(line)].map(({ key }) => key),
    ...picks,
    ...(line.kind === 'look' ? [tableId(line.table.title)] : []),
    ...line.guards.flatMap(guard => branches.get(guard) ?? []),
  ]
}

/** A value whose line was not reached: it stands in the trace without a value. */
const missedSpot = (line: PlannedLine, entity: Entity): Spot => ({
  id: entity.key,
  kind: line.kind === 'look' ? 'look' : 'step',
  name: entity.key,
  number: '',
  symbol: entity.symbol,
  entity,
  says: line.says,
  place: line.place,
  restsOn: usedBy(line).map(({ key }) => key),
})
