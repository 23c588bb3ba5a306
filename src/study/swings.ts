import { neededFor } from '../evaluation/needed-ops.ts'
import type { Plan } from '../evaluation/plan-types.ts'
import { assumptionsOf } from './assumptions.ts'
import { isRanged, type Ranged } from './drawn.ts'
import { type Measure, readIn } from './measure.ts'
import { baseOf, varied } from './varied.ts'
import { stateIn } from './watch.ts'

/** What one assumption does to a measure between the ends of its range, all others as written. */
export interface Swing {
  readonly variable: Ranged
  /** The measure with the assumption at either end; NaN where a method refuses there or the measure has no value. */
  readonly atFrom: number
  readonly atTo: number
}

/** A measure with the swings that move it, the widest first; an end without a value stands before all. */
export interface Swings {
  readonly measure: Measure
  readonly base: number
  readonly swings: readonly Swing[]
  /** Ranged assumptions that do not move it. */
  readonly still: readonly string[]
}

/** Takes each assumption with a range to both its ends: the sensitivity of each measure. Second methods are left out. */
export function swingsOf(plan: Plan, measures: readonly Measure[]): readonly Swings[] {
  const ranged = assumptionsOf(plan).variables.filter(isRanged)
  const base = baseOf(plan)
  const ends = endsIn(plan, measures)
  const all = ranged.map(variable => ({ variable, ends: ends(variable) }))
  return measures.map((measure, index) => {
    const now = measure.read(base)
    const swings = all.map(
      ({ variable, ends: [from, to] }): Swing => ({
        variable,
        atFrom: from[index] ?? Number.NaN,
        atTo: to[index] ?? Number.NaN,
      }),
    )
    const moves = ({ atFrom, atTo }: Swing) => atFrom !== now || atTo !== now
    return {
      measure,
      base: now,
      swings: swings.filter(moves).sort((a, b) => width(b) - width(a)),
      still: swings.filter(swing => !moves(swing)).map(({ variable }) => variable.entity.key),
    }
  })
}

function width({ atFrom, atTo }: Swing): number {
  const wide = Math.abs(atTo - atFrom)
  return Number.isNaN(wide) ? Number.MAX_VALUE : wide
}

/** Reads the measures at both ends of a range. */
function endsIn(plan: Plan, measures: readonly Measure[]) {
  const state = stateIn(plan)
  const needed = neededFor(
    measures.flatMap(({ reads }) => reads),
    plan.ops,
  )
  return ({ entity, range }: Swing['variable']): [number[], number[]] => {
    const runs = varied(plan, [entity], needed)
    const at = (si: number): number[] => {
      const slots = runs.at([si])
      return measures.map(measure => readIn(measure, slots, { state }))
    }
    return [at(range.from), at(range.to)]
  }
}
