import type { Plan } from '../evaluation/plan-types.ts'
import { assumptionsOf, type Variable } from './assumptions.ts'
import { findTurn } from './find-turn.ts'
import { looksOf } from './looks.ts'
import { endOf, type MarginEnd, type Searching, searchingOf } from './margin-end.ts'
import { type SearchInterval, searchInterval } from './search-interval.ts'
import { varied } from './varied.ts'
import { watchOf } from './watch.ts'

/** How far one assumption can move by itself, down and up. */
export interface Margin {
  readonly variable: Variable
  readonly value: number
  readonly interval: SearchInterval
  readonly down: MarginEnd
  readonly up: MarginEnd
}

/** An assumption without a margin, and why. */
export interface Unsearched {
  readonly key: string
  readonly why:
    | 'a choice of words'
    | 'a choice is taken from it'
    | 'nothing rests on it'
    | 'its value is 0 and it has no range'
}

export interface Margins {
  /** Tightest first: by the nearest turn or refusal, as a share of the value. */
  readonly margins: readonly Margin[]
  readonly unsearched: readonly Unsearched[]
  /** How many times the notebook was worked out, in whole or in part. */
  readonly runs: number
}

/** Places that are looked at each way before anything is followed closer; they lie closer near the value. Fewer where a numerical method is run again. */
const places = { formulas: 48, solves: 12 }

/**
 * For every numeric assumption, moved alone, the nearest value either way at which some check turns: stops being satisfied, or becomes
 * so where it is not. Where a method refuses or a formula comes to nothing first, the search ends there and says so.
 * Second methods are left out. `about` hears of each assumption before it is searched.
 */
export function findMargins(plan: Plan, about?: (variable: Variable) => void): Margins {
  const search = searchMargins(plan, about)
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value
}

/** The same search, assumption by assumption: who has other work comes in between. */
export function* searchMargins(plan: Plan, about?: (variable: Variable) => void): Generator<undefined, Margins> {
  const { variables, words, chosen } = assumptionsOf(plan)
  const margins: Margin[] = []
  const unsearched: Unsearched[] = [
    ...words.map((key): Unsearched => ({ key, why: 'a choice of words' })),
    ...chosen.map((key): Unsearched => ({ key, why: 'a choice is taken from it' })),
  ]
  const searching = searchingOf(plan)
  let runs = 0
  for (const variable of variables) {
    about?.(variable)
    const found = marginOf(searching, variable, () => {
      runs += 1
    })
    if ('why' in found) unsearched.push(found)
    else margins.push(found)
    yield undefined
  }
  return { margins: margins.sort((a, b) => tightness(a) - tightness(b)), unsearched, runs }
}

function marginOf(searching: Searching, variable: Variable, ran: () => void): Margin | Unsearched {
  const { plan } = searching
  const { entity } = variable
  const value = plan.start[entity.slot] ?? Number.NaN
  const interval = searchInterval(variable, value)
  const runs = varied(plan, [entity])
  const watch = watchOf(runs)
  if (watch.checks.length === 0 && !watch.sees) return { key: entity.key, why: 'nothing rests on it' }
  if (!interval) return { key: entity.key, why: 'its value is 0 and it has no range' }
  const looks = looksOf(entity, { runs, watch }, ran)
  const end = (to: number): MarginEnd => {
    const found = findTurn(
      looks,
      placesTo({ value, to, count: runs.solves > 0 ? places.solves : places.formulas }, variable),
    )
    return endOf(searching, { variable, checks: watch.checks, to }, found)
  }
  return { variable, value, interval, down: end(interval.from), up: end(interval.to) }
}

/** From the value to the end of the interval, the ends of the range among them. */
function placesTo({ value, to, count }: { value: number; to: number; count: number }, { range }: Variable): number[] {
  const steps = Array.from({ length: count + 1 }, (_, index) => value + (to - value) * (index / count) ** 1.5)
  const edges = range ? [range.from, range.to].filter(edge => (edge - value) * (to - edge) > 0) : []
  return [...steps, ...edges].sort((a, b) => Math.abs(a - value) - Math.abs(b - value))
}

/** The nearer end as a share of the value; of the search where a share says nothing. Without an end: infinite. */
export function tightness({ variable, value, interval, down, up }: Margin): number {
  const whole = variable.entity.point || value === 0 ? interval.to - value : Math.abs(value)
  return Math.min(
    ...[down, up].map(end => (end.kind === 'none' ? Number.POSITIVE_INFINITY : Math.abs(end.at - value) / whole)),
  )
}
