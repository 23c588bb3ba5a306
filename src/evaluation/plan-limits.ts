import type { Place } from '../diagnostic/diagnostic.ts'
import type { Condition, Limit, Step } from '../modules/module.ts'
import type { Keyed } from '../notebook/types.ts'
import { pushForget, pushOp, pushStop } from './draft-ops.ts'
import { judge, type Stage } from './module-scope.ts'
import { ownFormula } from './own-text.ts'
import { rowsOf } from './plan-rows.ts'
import { planSteps } from './plan-steps.ts'
import type { Entity, Judged, PlannedLimit, Row } from './plan-types.ts'
import { findIn } from './scope.ts'

interface Method {
  readonly steps: readonly Step[]
  readonly limits: readonly Limit[]
  /** The slot that holds 1 while the steps may be evaluated. */
  readonly alive: number
}

/** Plans a method's steps, and each limit as soon as every name it needs is known. A refusal stops what follows of the method. */
export function planWithLimits(stage: Stage, { steps, limits, alive }: Method): PlannedLimit[] {
  const waiting = new Set(limits.filter(({ when }) => !when || isKnownTrue(stage, when)))
  const planned: PlannedLimit[] = []
  const planReady = (): void => {
    for (const limit of waiting) {
      const names = 'formula' in limit.holds ? ownFormula(stage.draft, limit.holds.formula).names : []
      const stages = stagesOf(stage, limit)
      if (stages.some(({ scope }) => names.some(name => findIn(scope, name) === undefined))) continue
      waiting.delete(limit)
      const ready = stages.map(at => planLimit(at, limit))
      // Every row is judged before the first stops the block.
      if (limit.otherwise === 'refuse') for (const { judged } of ready) pushRefusal(stage, judged, alive)
      planned.push(...ready)
    }
  }
  planReady()
  for (const step of steps) {
    planSteps(stage, [step])
    planReady()
  }
  return planned.sort((a, b) => limits.indexOf(a.limit) - limits.indexOf(b.limit))
}

/** Where a limit is judged: in the block, or in each row of its list. */
function stagesOf(stage: Stage, { each }: Limit): readonly Stage[] {
  if (each === undefined) return [stage]
  return rowsOf(stage, each).map(({ scope, row }) => ({ ...stage, scope, row }))
}

const planLimit = (stage: Stage, limit: Limit): PlannedLimit => ({
  limit,
  judged: judgeLimit(stage, limit.holds),
  place: limitPlace(stage, limit.on),
  ...(stage.row ? { row: stage.row } : {}),
})

/** Only what is known not to hold refuses. */
function pushRefusal(stage: Stage, judged: Judged, alive: number): void {
  if ('slot' in judged) pushStop(stage.draft, stage, { slot: judged.slot, keeps: truth => truth !== 0, alive })
  else if (!judged.known) pushStop(stage.draft, stage, { slot: alive, keeps: () => false, alive })
}

function isKnownTrue(stage: Stage, condition: Condition): boolean {
  const judged = judge(stage, condition)
  return 'known' in judged && judged.known
}

/** A limit's condition. One that comes to nothing although every number in it is known, as `1 / 0 < 2` does, is not kept. */
function judgeLimit(stage: Stage, holds: Condition): Judged {
  const judged = judge(stage, holds)
  if ('known' in judged) return judged
  const { slot, operands } = judged
  const run = (slots: Float64Array): void => {
    const known = operands.every(operand => Number.isFinite(slots[operand.slot]))
    if (known && Number.isNaN(slots[slot])) slots[slot] = 0
  }
  pushOp(stage.draft, stage, { reads: [slot, ...operands.map(operand => operand.slot)], writes: [slot], run })
  return judged
}

function limitPlace({ draft, block: index, place, row }: Stage, on: string | undefined): Place {
  const block = draft.notebook.blocks[index]
  if (block?.kind !== 'calc' || !on) return place
  const keyed = keyedAs(row ? rowEntries(block.inputs, row) : block.inputs, on)
  if (!keyed) return place
  return keyed.value.kind === 'scalar' ? keyed.value.written.place : keyed.key.place
}

const keyedAs = (entries: readonly Keyed[], key: string): Keyed | undefined =>
  entries.find(entry => entry.key.text === key)

function rowEntries(inputs: readonly Keyed[], { list, index }: Row): readonly Keyed[] {
  const value = keyedAs(inputs, list)?.value
  const item = value?.kind === 'list' ? value.items[index] : undefined
  return item?.kind === 'map' ? item.entries : []
}

/** A method that is refused gives nothing: what its steps had come to before the refusal is taken back. */
export function forgetWhereStopped(stage: Stage, { alive, gives }: { alive: number; gives: readonly Entity[] }): void {
  pushForget(stage.draft, stage.second, { alive, slots: gives.map(({ slot }) => slot) })
}
