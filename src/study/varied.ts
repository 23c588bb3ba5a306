import { asWritten } from '../evaluation/evaluate.ts'
import type { Entity, Op, Plan } from '../evaluation/plan-types.ts'
import { restingOn } from '../evaluation/resting.ts'

/** What some assumptions move in a plan; second methods are left out. */
export interface Moving {
  readonly plan: Plan
  /** Numbers of the notebook as written. */
  readonly base: Float64Array
  /** True for every slot that the assumptions can move. */
  readonly moved: (slot: number) => boolean
  /** Numerical methods that are run again each time, save where their answer is remembered. */
  readonly solves: number
}

/** A plan to be run again and again with other numbers for some assumptions. */
export interface Varied extends Moving {
  /** What is done again, in order. */
  readonly ops: readonly Op[]
  /**
   * Numbers with the assumptions at these SI values. The array is lent: the next call writes over it.
   * Refuses (throws) a value that is not finite.
   */
  readonly at: (values: readonly number[]) => Float64Array
}

/** The numbers of a notebook as written, second methods left out: lent. */
export const baseOf = (plan: Plan): Float64Array => asWritten(plan, false)

/**
 * Prepares runs with `assumptions` changed: only what rests on them is done again. Gives the same numbers as `run`. Where `needed` is given
 * nothing else is done: what needs another op holds anything.
 */
export function varied(plan: Plan, assumptions: readonly Entity[], needed?: ReadonlySet<Op>): Varied {
  const base = baseOf(plan)
  const resting = restingOn(
    plan,
    assumptions.map(({ slot }) => slot),
    { second: false },
  )
  const { slots, moved } = resting
  const ops = needed ? resting.ops.filter(op => needed.has(op)) : resting.ops
  const work = base.slice()
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
  return { plan, base, moved, ops, solves: ops.filter(op => op.solves).length, at }
}
