import { run } from '../evaluation/evaluate.ts'
import type { Entity, Op, Plan } from '../evaluation/plan-types.ts'

/** A plan to be run again and again with other numbers for some assumptions; second methods are left out. */
export interface Varied {
  readonly plan: Plan
  /** Numbers of the notebook as written. */
  readonly base: Float64Array
  /** True for every slot that the assumptions can move. */
  readonly moved: (slot: number) => boolean
  /** Numerical methods that are run again each time, save where their answer is remembered. */
  readonly solves: number
  /**
   * Numbers with the assumptions at these SI values. The array is lent: the next call writes over it.
   * Refuses (throws) a value that is not finite.
   */
  readonly at: (values: readonly number[]) => Float64Array
}

/** The numbers of a notebook as written, second methods left out. */
export const baseOf = (plan: Plan): Float64Array => run(plan, { second: false })

/**
 * Prepares runs with `assumptions` changed: only what rests on them is done again. Gives the same numbers as `run`. Who prepares many
 * hands in the numbers as written, `base`.
 */
export function varied(plan: Plan, assumptions: readonly Entity[], { base = baseOf(plan) } = {}): Varied {
  const { ops, slots } = restingOn(
    plan,
    assumptions.map(({ slot }) => slot),
  )
  const work = Float64Array.from(base)
  const at = (values: readonly number[]): Float64Array => {
    for (const slot of slots) work[slot] = plan.start[slot] as number
    for (const [index, entity] of assumptions.entries()) {
      const si = values[index] ?? Number.NaN
      if (!Number.isFinite(si)) throw new RangeError(`\`${entity.key}\` cannot be ${si}`)
      work[entity.slot] = si
    }
    for (const op of ops) op.run(work)
    return work
  }
  const moved = new Set([...slots, ...assumptions.map(({ slot }) => slot)])
  return { plan, base, moved: slot => moved.has(slot), solves: ops.filter(op => op.solves).length, at }
}

/** What must be done again, and the slots it may change. An op that shares a slot with one that is done again is done again too. */
function restingOn(plan: Plan, from: readonly number[]): { ops: readonly Op[]; slots: readonly number[] } {
  const first = plan.ops.filter(op => !op.second)
  const moved = new Set(from)
  const chosen = new Set<Op>()
  for (let before = -1; before !== chosen.size; ) {
    before = chosen.size
    for (const op of first) {
      if (chosen.has(op)) continue
      if (!op.reads.some(slot => moved.has(slot)) && !op.writes.some(slot => moved.has(slot))) continue
      chosen.add(op)
      for (const slot of op.writes) moved.add(slot)
    }
  }
  for (const slot of from) moved.delete(slot)
  return { ops: first.filter(op => chosen.has(op)), slots: [...moved] }
}
