import { keptWithPlan } from './kept-with-plan.ts'
import type { Op, Plan } from './plan-types.ts'

/** The ops of a plan, and by slot the places of those that read or write it. */
interface Touching {
  readonly ops: readonly Op[]
  readonly touching: readonly (readonly number[])[]
}

/** Gathered once a plan: studies ask it for every assumption. */
const touchingOf = keptWithPlan((plan, second): Touching => {
  const ops = second ? plan.ops : plan.ops.filter(op => !op.second)
  const touching = Array.from({ length: plan.slots }, (): number[] => [])
  for (const [at, { reads, writes }] of ops.entries())
    for (const slot of [...reads, ...writes]) touching[slot]?.push(at)
  return { ops, touching }
})

/** What must be done again where some slots change. */
export interface Resting {
  /** In the order of the plan. */
  readonly ops: readonly Op[]
  /** The slots that change: those that were named, then those that the ops may write. */
  readonly slots: readonly number[]
  readonly moved: (slot: number) => boolean
}

/** The ops that rest on the slots `from`. An op that shares a slot with one that is done again is done again too. */
export function restingOn(plan: Plan, from: readonly number[], { second }: { readonly second: boolean }): Resting {
  const { ops, touching } = touchingOf(plan, second)
  const moved = new Uint8Array(plan.slots)
  const chosen = new Uint8Array(ops.length)
  const slots: number[] = []
  const move = (slot: number): void => {
    if (moved[slot] === 1) return
    moved[slot] = 1
    slots.push(slot)
  }
  from.forEach(move)
  // An array is gone through to its end, what is added on the way among it.
  for (const slot of slots)
    for (const at of touching[slot] ?? []) {
      if (chosen[at] === 1) continue
      chosen[at] = 1
      ops[at]?.writes.forEach(move)
    }
  return { ops: ops.filter((_, at) => chosen[at] === 1), slots, moved: slot => moved[slot] === 1 }
}
