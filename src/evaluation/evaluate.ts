import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { judgeRun } from './judge-run.ts'
import { keptWithPlan } from './kept-with-plan.ts'
import type { Entity, Plan } from './plan-types.ts'
import { restingOn } from './resting.ts'
import { settled } from './settled.ts'

/** Assumptions put in other than as written: SI numbers by key (`site.water_depth`). */
export interface Changes {
  readonly changed?: ReadonlyMap<string, number>
  /** False leaves the second methods out, as studies do. True by default. */
  readonly second?: boolean
}

/** The numbers of one evaluation. */
export interface Results {
  readonly plan: Plan
  /** SI numbers by slot; NaN where nothing was evaluated. */
  readonly slots: Float64Array
  readonly diagnostics: readonly Diagnostic[]
  /** Values without a number, with the fault that stopped them; a branch not taken has none. */
  readonly absent: ReadonlyMap<Entity, Diagnostic | 'not taken'>
}

/** The numbers of a notebook as written: worked out once a plan, and lent. */
export const asWritten = keptWithPlan((plan, second) => {
  const slots = plan.start.slice()
  for (const op of plan.ops) if (second || !op.second) op.run(slots)
  return slots
})

/**
 * The numbers alone: nothing is judged. Only what rests on a change is done again. Refuses (throws) a changed key that is no assumption or that a
 * choice was taken from, and a changed number that is not finite.
 */
export function run(plan: Plan, { changed = new Map(), second = true }: Changes = {}): Float64Array {
  const put = [...changed].map(([key, si]) => ({ slot: slotOf(plan, key, si), si }))
  const resting = restingOn(
    plan,
    put.map(({ slot }) => slot),
    { second },
  )
  const slots = asWritten(plan, second).slice()
  for (const slot of resting.slots) slots[slot] = plan.start[slot] as number
  for (const { slot, si } of put) slots[slot] = si
  for (const op of resting.ops) op.run(slots)
  return slots
}

function slotOf(plan: Plan, key: string, si: number): number {
  const named = plan.names.get(key)
  if (named?.kind !== 'number' || named.origin !== 'assumption') throw new Error(`no assumption is called \`${key}\``)
  if (plan.chosen.has(named)) throw new Error(`\`${plan.chosen.get(named)}\` was chosen by \`${key}\``)
  if (!Number.isFinite(settled(si))) throw new RangeError(`\`${key}\` cannot be ${si}`)
  return named.slot
}

/** Numbers for every value of the plan, with what is wrong or doubtful about them. A pure function of its two arguments. */
export function evaluate(plan: Plan, changes: Changes = {}): Results {
  const slots = run(plan, changes)
  return { plan, slots, ...judgeRun(plan, slots, changes) }
}
