import type { Plan } from '../evaluation/plan-types.ts'
import { assumptionsOf, type Variable } from './assumptions.ts'
import { type Columns, columns, rowsOf } from './columns.ts'
import { type Draws, drawer, isRanged, type Ranged } from './drawn.ts'
import { lostRows } from './lost-rows.ts'
import type { Measure } from './measure.ts'
import type { Spreaded } from './spread-of.ts'
import { type CheckCount, tallyOf } from './tally.ts'
import { readsOf, watchOf } from './watch.ts'

export interface SampleOptions extends Draws {
  readonly measures: readonly Measure[]
  /** Hears how many are done, every hundred or so. */
  readonly about?: (done: number) => void
}

export interface Sampled {
  readonly variables: readonly Variable[]
  readonly samples: number
  /** Samples in which a method refused or a formula had no value: they count for no check and no measure. */
  readonly lost: number
  readonly checks: readonly CheckCount[]
  /** Samples in which every check asked was satisfied; lost ones are not among them. */
  readonly allSatisfied: number
  readonly measures: readonly Spreaded[]
}

/** The assumptions that are drawn, made ready: what a study says before it begins. */
export function preparedSamples(plan: Plan): { readonly variables: readonly Ranged[]; readonly runs: Columns } {
  const variables = assumptionsOf(plan).variables.filter(isRanged)
  const runs = columns(
    plan,
    variables.map(({ entity }) => entity),
  )
  return { variables, runs }
}

/**
 * Draws every assumption that has a range, independently of each other, so many times, and counts what comes of it; all others as written.
 * The same seed gives the same numbers. Second methods are left out.
 */
export function sample({ variables, runs }: ReturnType<typeof preparedSamples>, options: SampleOptions): Sampled {
  const { samples, measures, about } = options
  const watch = watchOf(runs)
  const lostIn = lostRows(runs, watch.probes)
  const rowAt = rowsOf(runs, [...watch.checks.flatMap(readsOf), ...measures.flatMap(({ reads }) => reads)])
  const drawn = drawer(variables, { ...options, base: runs.base, length: runs.length })
  const tally = tallyOf(watch, { measures, most: samples })
  for (let index = 0; index < samples; index += runs.length) {
    about?.(index)
    const rows = Math.min(runs.length, samples - index)
    runs.at(drawn(index, rows), rows)
    const lost = lostIn(rows)
    for (let row = 0; row < rows; row += 1) if (lost[row] === 0) tally.add(rowAt(row))
  }
  const { kept, ...counted } = tally.read()
  return { variables, samples, lost: samples - kept, ...counted }
}
