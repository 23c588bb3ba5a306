import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { judgeRun } from './judge-run.ts'
import type { Entity, Plan } from './plan-types.ts'
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

/** The numbers alone, for studies: nothing is judged. Refuses (throws) a changed key that is no assumption or that a
 * choice was taken from, and a changed number that is not finite. */
export function run(plan: Plan, changes: Changes = {}): Float64Array {
  const slots = plan.start.slice()
  for (const [key, si] of changes.changed ?? []) {
    const named = plan.names.get(key)
    if (named?.kind !== 'number' || named.origin !== 'assumption') throw new Error(`no assumption is called \`${key}\``)
    if (plan.chosen.has(named)) throw new Error(`\`${plan.chosen.get(named)}\` was chosen by \`${key}\``)
    if (!Number.isFinite(settled(si))) throw new RangeError(`\`${key}\` cannot be ${si}`)
    slots[named.slot] = si
  }
  const second = changes.second ?? true
  for (const op of plan.ops) if (second || !op.second) op.run(slots)
  return slots
}

/** Numbers for every value of the plan, with what is wrong or doubtful about them. A pure function of its two arguments. */
export function evaluate(plan: Plan, changes: Changes = {}): Results {
  const slots = run(plan, changes)
  return { plan, slots, ...judgeRun(plan, slots, changes) }
}
