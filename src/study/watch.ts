import { secondLinesOf } from '../evaluation/block-lines.ts'
import type { Plan, PlannedCheck, PlannedLine } from '../evaluation/plan-types.ts'
import type { Moving } from './varied.ts'

/** Satisfied, not satisfied, behind a branch that was not taken, or without an answer because a method refused or nothing came out. */
export type CheckState = 'satisfied' | 'not satisfied' | 'not asked' | 'lost'

/** A check with an answer. */
export type Verdict = Exclude<CheckState, 'lost'>

/** What a study looks at after each run: the checks and values that the varied assumptions can move. */
export interface Watch {
  readonly checks: readonly PlannedCheck[]
  /** True where anything at all rests on the varied assumptions. */
  readonly sees: boolean
  /** The state of a check in a run. */
  readonly state: (check: PlannedCheck, slots: Float64Array) => CheckState
  /** True where a value that the notebook as written has is lost: a method refused its inputs, or a formula came to nothing. */
  readonly isLost: (slots: Float64Array) => boolean
  readonly probes: Probes
}

/** Where it shows that something is lost. */
export interface Probes {
  /** Slots that hold 1 as long as no method refuses. */
  readonly living: readonly number[]
  /** Slots that hold a number. */
  readonly open: Int32Array
  /** The same behind guards. */
  readonly guarded: readonly { readonly guards: readonly number[]; readonly slot: number }[]
}

/** Watches what a variation can move. What is lost in the notebook as written is not watched. */
export function watchOf({ plan, base, moved }: Moving): Watch {
  const alive = aliveSlots(plan)
  const state = stateIn(plan)
  const sound = firstLines(plan).filter(
    line => outcomes(line).some(moved) && !outcomes(line).some(slot => isLostAt(line, slot, base)),
  )
  const living = [...alive].filter(slot => moved(slot) && base[slot] === 1)
  const probes = sound.flatMap(line => outcomes(line).map(slot => ({ guards: line.guards, slot })))
  // Most lines stand behind no guard: they are looked at in one plain pass.
  const open = Int32Array.from(probes.filter(({ guards }) => guards.length === 0).map(({ slot }) => slot))
  const guarded = probes.filter(({ guards }) => guards.length > 0)
  return {
    checks: sound.flatMap(line => (line.kind === 'check' && state(line, base) !== 'lost' ? [line] : [])),
    sees: sound.length > 0,
    state,
    probes: { living, open, guarded },
    isLost: slots => {
      for (const slot of living) if (slots[slot] !== 1) return true
      for (let at = 0; at < open.length; at += 1) if (Number.isNaN(slots[open[at] as number])) return true
      for (const probe of guarded) if (isLostAt(probe, probe.slot, slots)) return true
      return false
    },
  }
}

const aliveSlots = (plan: Plan): ReadonlySet<number> =>
  new Set(plan.blocks.flatMap(block => (block?.kind === 'calc' ? [block.alive] : [])))

/** Reads the state of a check in a run of this plan. */
export function stateIn(plan: Plan): Watch['state'] {
  const alive = aliveSlots(plan)
  return (check, slots) => stateOf(check, slots, alive)
}

/** Every line of the first methods. */
export function firstLines(plan: Plan): readonly PlannedLine[] {
  const second = new Set(plan.blocks.flatMap(block => (block ? secondLinesOf(block) : [])))
  return plan.trail.filter(line => !second.has(line))
}

function outcomes(line: PlannedLine): readonly number[] {
  switch (line.kind) {
    case 'formula':
    case 'look':
      return [line.gives.slot]
    case 'solve':
      return line.gives.map(({ entity }) => entity.slot)
    case 'check':
      return [line.slot]
    case 'branch':
      return line.test ? [line.test.slot] : []
  }
}

/** Reached, and came to nothing. */
export function isLostAt({ guards }: Pick<PlannedLine, 'guards'>, slot: number, slots: Float64Array): boolean {
  if (!Number.isNaN(slots[slot])) return false
  for (const guard of guards) if (slots[guard] !== 1) return false
  return true
}

/** Every slot that the state of a check rests on. */
export const readsOf = ({ guards, slot }: PlannedCheck): readonly number[] => [...guards, slot]

function stateOf(check: PlannedCheck, slots: Float64Array, alive: ReadonlySet<number>): CheckState {
  for (const guard of check.guards) {
    if (slots[guard] === 1) continue
    // A branch not taken holds 0; a guard that was never judged, or a block that was refused, has lost what stands behind it.
    return slots[guard] === 0 && !alive.has(guard) ? 'not asked' : 'lost'
  }
  const truth = slots[check.slot]
  return truth === 1 ? 'satisfied' : truth === 0 ? 'not satisfied' : 'lost'
}

/** Demand less capacity in SI: positive where the check is not satisfied; NaN where it is not one comparison. */
export function excess({ sides }: PlannedCheck, slots: Float64Array): number {
  return sides ? sides.demand(slots) - sides.capacity(slots) : Number.NaN
}
