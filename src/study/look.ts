import type { PlannedCheck } from '../evaluation/plan-types.ts'
import type { CheckState, Verdict } from './watch.ts'

/** What one run at `x` showed of the watched checks, each in its place. */
export interface Look {
  readonly x: number
  readonly states: readonly CheckState[]
  /** Demand less capacity; NaN where a check is not one comparison. */
  readonly excess: readonly number[]
  readonly lost: boolean
}

/** One check at a place. */
export interface CheckLook {
  readonly state: CheckState
  readonly excess: number
}

/** What is searched: the checks, and what a run shows. */
export interface Searched {
  readonly checks: readonly PlannedCheck[]
  readonly look: (x: number) => Look
  /** Looks at one check alone: it shows the same as among the others. */
  readonly followCheck: (index: number) => (x: number) => CheckLook
  /** Tells whether the first of what is lost at one place is lost at another. */
  readonly followLost: (lostAt: number) => (x: number) => boolean
}

/** A search, and what it set out from. */
export interface Search extends Searched {
  readonly start: Look
}

/** What a check has turned to, if it has: one that was not satisfied is so no more, or one is that was not. */
export function turnedTo({ start }: Search, index: number, state: CheckState): Verdict | undefined {
  const was = start.states[index] === 'not satisfied'
  return state !== 'lost' && was !== (state === 'not satisfied') ? state : undefined
}

/** The checks that have turned. */
export function turnedIn(search: Search, look: Look): readonly { index: number; state: Verdict }[] {
  return look.states.flatMap((shown, index) => {
    const state = turnedTo(search, index, shown)
    return state ? [{ index, state }] : []
  })
}

export const isTurned = (search: Search, look: Look): boolean => look.lost || turnedIn(search, look).length > 0
