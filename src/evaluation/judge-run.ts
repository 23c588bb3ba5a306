import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { sortDiagnostics } from '../diagnostic/sort-diagnostics.ts'
import { judgeBlocks, satisfied } from './judge-blocks.ts'
import { lookAt } from './plan-look.ts'
import type { Entity, Plan, PlannedCheck, PlannedLine } from './plan-types.ts'
import { shownText } from './shown-text.ts'
import { usedBy } from './used-by.ts'

/** What a run leaves to be said, and which values have no number and why. */
export interface Judgement {
  readonly diagnostics: readonly Diagnostic[]
  readonly absent: ReadonlyMap<Entity, Diagnostic | 'not taken'>
}

interface Judging {
  readonly plan: Plan
  readonly slots: Float64Array
  readonly found: Diagnostic[]
  readonly absent: Map<Entity, Diagnostic | 'not taken'>
  readonly stops: Map<Diagnostic, number>
  /** Blocks that were stopped before their steps. */
  readonly stopped: Map<number, Diagnostic>
}

/** Reads a run: ranges, values without a number (each cause once), limits, checks and second methods. */
export function judgeRun(plan: Plan, slots: Float64Array): Judgement {
  const judging: Judging = { plan, slots, found: [], absent: new Map(), stops: new Map(), stopped: new Map() }
  judgeRanges(judging)
  for (const block of plan.blocks) {
    if (block?.kind === 'calc') {
      const { found, stopped } = judgeBlocks(block, slots)
      judging.found.push(...found)
      if (stopped && !judging.stopped.has(block.index)) judging.stopped.set(block.index, stopped)
    }
  }
  for (const line of plan.trail) judgeLine(judging, line)
  const counted = judging.found.map(fault => withStops(fault, judging.stops.get(fault)))
  return { diagnostics: sortDiagnostics([...plan.diagnostics, ...counted]), absent: judging.absent }
}

const withStops = (fault: Diagnostic, stops: number | undefined): Diagnostic => (stops ? { ...fault, stops } : fault)

function judgeRanges(judging: Judging): void {
  for (const range of judging.plan.ranges) {
    const value = judging.slots[range.entity.slot] ?? Number.NaN
    if (!Number.isFinite(value) || range.keeps(value)) continue
    const { refuses, entity } = range
    const says = `\`${entity.name}\` is ${shownText(entity, value)}; it must be ${range.says}`
    const fault: Diagnostic = refuses
      ? { rule: 'value-outside-range', severity: 'error', place: entity.place, says }
      : {
          rule: 'value-unusual',
          severity: 'warning',
          place: entity.place,
          says: `\`${entity.name}\` is ${shownText(entity, value)}; it is ${range.says}`,
        }
    judging.found.push(fault)
    if (refuses) judging.stopped.set(range.block, judging.stopped.get(range.block) ?? fault)
  }
}

function judgeLine(judging: Judging, line: PlannedLine): void {
  if (line.kind === 'check') judgeCheck(judging, line)
  const gives =
    line.kind === 'formula' || line.kind === 'look'
      ? [line.gives]
      : line.kind === 'solve'
        ? line.gives.map(({ entity }) => entity)
        : []
  const missing = gives.filter(entity => !Number.isFinite(judging.slots[entity.slot]))
  const [first] = missing
  if (!first) return
  const taken = line.guards.every(guard => judging.slots[guard] === 1)
  const cause = taken ? causeOf(judging, line, first) : (stopOf(judging, first.block) ?? guardCause(judging, first))
  for (const entity of missing) if (!judging.absent.has(entity) || taken) judging.absent.set(entity, cause)
}

function judgeCheck(judging: Judging, line: PlannedCheck): void {
  if (satisfied(line, judging.slots) !== false) return
  const says = `Not satisfied: ${line.says} (\`${line.formula.text}\`)`
  judging.found.push({ rule: 'check-not-satisfied', severity: 'warning', place: line.place, says })
}

/** What stopped a whole block before its steps: a range, a limit, or an input that has no number itself. */
function stopOf(judging: Judging, index: number): Diagnostic | undefined {
  const known = judging.stopped.get(index)
  const block = judging.plan.blocks[index]
  if (known || block?.kind !== 'calc' || judging.slots[block.alive] === 1) return known
  for (const { value } of block.given) {
    const cause = typeof value === 'string' ? undefined : absentCause(judging, value)
    if (cause && cause !== 'not taken') return cause
    if (cause && typeof value !== 'string') {
      const fault = report(judging, value.place, `\`${value.name}\` was not evaluated: its branch was not taken`)
      judging.stopped.set(index, fault)
      return fault
    }
  }
  return undefined
}

/** A line behind a guard that is not 1: the branch was not taken. */
const guardCause = (judging: Judging, entity: Entity): Diagnostic | 'not taken' =>
  judging.absent.get(entity) ?? 'not taken'

function causeOf(judging: Judging, line: PlannedLine, gives: Entity): Diagnostic {
  for (const operand of usedBy(line)) {
    if (Number.isFinite(judging.slots[operand.slot])) continue
    const known = absentCause(judging, operand)
    if (known === 'not taken') {
      return report(
        judging,
        line.place,
        `\`${gives.name}\` needs \`${operand.name}\`, which was not evaluated: its branch was not taken`,
      )
    }
    if (known) {
      judging.stops.set(known, (judging.stops.get(known) ?? 0) + 1)
      return known
    }
  }
  return ownFault(judging, line, gives)
}

function absentCause(judging: Judging, operand: Entity): Diagnostic | 'not taken' | undefined {
  for (let entity: Entity | undefined = operand; entity; entity = entity.same) {
    const cause = judging.absent.get(entity)
    if (cause) return cause
  }
  return undefined
}

/** The line itself has no finite value although all it uses have. */
function ownFault(judging: Judging, line: PlannedLine, gives: Entity): Diagnostic {
  if (line.kind === 'look') {
    const found = lookAt(line, judging.slots)
    return report(
      judging,
      line.place,
      `\`${gives.name}\`: ${found.ok ? line.table.title : found.says} (${line.table.title})`,
      'lookup-outside-table',
    )
  }
  if (line.kind === 'solve') {
    const answer = line.solve(judging.slots)
    return report(
      judging,
      line.place,
      `\`${gives.name}\`: ${line.step.method.title} gave no answer: ${answer.ok ? 'a value is not finite' : answer.says}`,
      'solve-failed',
    )
  }
  const text = line.kind === 'formula' ? line.formula.text : ''
  return report(judging, line.place, `\`${gives.name} = ${text}\` has no finite value for these numbers`)
}

function report(
  judging: Judging,
  place: Place,
  says: string,
  rule: Diagnostic['rule'] = 'value-not-finite',
): Diagnostic {
  const fault: Diagnostic = { rule, severity: 'error', place, says }
  judging.found.push(fault)
  return fault
}
