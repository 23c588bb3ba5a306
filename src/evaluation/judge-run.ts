import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { sortDiagnostics } from '../diagnostic/sort-diagnostics.ts'
import { linesOf, secondLinesOf } from './block-lines.ts'
import { judgeBlocks, satisfied } from './judge-blocks.ts'
import { judgeRanges } from './judge-ranges.ts'
import { ownFault } from './own-fault.ts'
import type { Entity, Plan, PlannedBlock, PlannedCheck, PlannedLine } from './plan-types.ts'
import { givenBy, usedBy } from './used-by.ts'

/** Why a value has no number. */
export type Cause = Diagnostic | 'not taken'

/** What a run leaves to be said, and which values have no number and why. */
export interface Judgement {
  readonly diagnostics: readonly Diagnostic[]
  readonly absent: ReadonlyMap<Entity, Cause>
}

interface Judging {
  readonly plan: Plan
  readonly slots: Float64Array
  readonly found: Diagnostic[]
  /** The block each line stands in. */
  readonly owners: ReadonlyMap<PlannedLine, PlannedBlock>
  readonly absent: Map<Entity, Cause>
  readonly stops: Map<Diagnostic, number>
  /** Blocks that were stopped before or among their steps. */
  readonly stopped: Map<number, Diagnostic>
  /** Guards of branches whose condition could not be judged. */
  readonly blind: Map<number, Diagnostic>
}

/**
 * Reads a run: ranges, values and conditions that came to nothing (each cause once), limits, checks and second methods.
 * What the second methods give is left aside where they were left out.
 */
export function judgeRun(plan: Plan, slots: Float64Array, { second = true }: { second?: boolean } = {}): Judgement {
  const ranges = judgeRanges(plan, slots)
  const blocks = plan.blocks.filter(block => block !== undefined)
  const judging: Judging = {
    plan,
    slots,
    found: [...ranges.found],
    owners: new Map(blocks.flatMap(block => linesOf(block).map(line => [line, block]))),
    absent: new Map(),
    stops: new Map(),
    stopped: new Map(ranges.stopped),
    blind: new Map(),
  }
  for (const block of blocks) {
    if (block.kind !== 'calc') continue
    const { found, stopped } = judgeBlocks(block, slots)
    judging.found.push(...found)
    if (stopped && !judging.stopped.has(block.index)) judging.stopped.set(block.index, stopped)
  }
  const aside = second ? new Set<PlannedLine>() : new Set(blocks.flatMap(secondLinesOf))
  for (const line of plan.trail) if (!aside.has(line)) judgeLine(judging, line)
  const counted = judging.found.map(fault => withStops(fault, judging.stops.get(fault)))
  return { diagnostics: sortDiagnostics([...plan.diagnostics, ...counted]), absent: judging.absent }
}

const withStops = (fault: Diagnostic, stops: number | undefined): Diagnostic => (stops ? { ...fault, stops } : fault)

/** Gives each value of the line that has no number its cause, and reports the line where it is the cause itself. */
function judgeLine(judging: Judging, line: PlannedLine): void {
  if (line.kind === 'check') sayUnsatisfied(judging, line)
  const missing = givenBy(line).filter(entity => !Number.isFinite(judging.slots[entity.slot]))
  if (missing.length === 0 && !isUnjudged(judging, line)) return
  const reached = line.guards.every(guard => judging.slots[guard] === 1)
  const cause = reached ? causeOf(judging, line) : whyNotReached(judging, line)
  for (const entity of missing) if (reached || !judging.absent.has(entity)) judging.absent.set(entity, cause)
  if (cause === 'not taken') return
  if (line.kind === 'branch') for (const guard of line.test?.sides ?? []) judging.blind.set(guard, cause)
}

/** True for a check or a branch over numbers that came to nothing. */
function isUnjudged({ slots }: Judging, line: PlannedLine): boolean {
  if (line.kind === 'check') return Number.isNaN(slots[line.slot])
  return line.kind === 'branch' && line.test !== undefined && Number.isNaN(slots[line.test.slot])
}

function sayUnsatisfied(judging: Judging, line: PlannedCheck): void {
  if (satisfied(line, judging.slots) !== false) return
  const { says, place, formula } = line
  const sentence = says === formula.text ? `\`${says}\`` : `${says} (\`${formula.text}\`)`
  judging.found.push({ rule: 'check-not-satisfied', severity: 'warning', place, says: `Not satisfied: ${sentence}` })
}

/** A line behind a guard that is not 1: its block was stopped, its branch could not be chosen, or was not taken. */
function whyNotReached(judging: Judging, line: PlannedLine): Cause {
  const blind = line.guards.map(guard => judging.blind.get(guard)).find(fault => fault !== undefined)
  const fault = stopOf(judging, line) ?? blind
  if (!fault) return 'not taken'
  count(judging, fault)
  return fault
}

/** What stopped the line's whole block: a range, a limit, or an input that has no number itself. */
function stopOf(judging: Judging, line: PlannedLine): Diagnostic | undefined {
  const block = judging.owners.get(line)
  if (block?.kind !== 'calc' || judging.slots[block.alive] === 1) return undefined
  const known = judging.stopped.get(block.index)
  if (known) return known
  for (const { value } of block.given) {
    const cause = typeof value === 'string' ? undefined : absentCause(judging, value)
    if (!cause || typeof value === 'string') continue
    const fault = cause === 'not taken' ? report(judging, value.place, notTaken(value)) : cause
    judging.stopped.set(block.index, fault)
    return fault
  }
  return undefined
}

const notTaken = ({ name }: Entity): string => `\`${name}\` was not evaluated: its branch was not taken`

/** The fault behind a line that was reached and came to nothing: that of a value it uses, or its own. */
function causeOf(judging: Judging, line: PlannedLine): Diagnostic {
  const operand = usedBy(line).find(each => !Number.isFinite(judging.slots[each.slot]))
  const known = operand && absentCause(judging, operand)
  if (!known) return push(judging, ownFault(line, judging.slots))
  if (known === 'not taken') {
    const [gives] = givenBy(line)
    const needs = gives ? `\`${gives.name}\` needs \`${operand.name}\`, which` : `\`${operand.name}\``
    return report(judging, line.place, `${needs} was not evaluated: its branch was not taken`)
  }
  count(judging, known)
  return known
}

const count = ({ stops }: Judging, fault: Diagnostic): void => void stops.set(fault, (stops.get(fault) ?? 0) + 1)

function absentCause(judging: Judging, operand: Entity): Cause | undefined {
  for (let entity: Entity | undefined = operand; entity; entity = entity.same) {
    const cause = judging.absent.get(entity)
    if (cause) return cause
  }
  return undefined
}

const report = (judging: Judging, place: Place, says: string): Diagnostic =>
  push(judging, { rule: 'value-not-finite', severity: 'error', place, says })

function push({ found }: Judging, fault: Diagnostic): Diagnostic {
  found.push(fault)
  return fault
}
