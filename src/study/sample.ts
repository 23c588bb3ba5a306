import type { Plan, PlannedCheck } from '../evaluation/plan-types.ts'
import { assumptionsOf, type Variable } from './assumptions.ts'
import { type Shares, type Spread, sharesFrom, stratified, usualCoverage, valueAt } from './draw.ts'
import type { Measure } from './measure.ts'
import { type Varied, varied } from './varied.ts'
import { watchOf } from './watch.ts'

export interface SampleOptions {
  readonly samples: number
  readonly seed: number
  readonly spread: Spread
  /** What the range holds of a normal distribution; `usualCoverage` where left out. */
  readonly coverage?: number
  /** One sample from each of as many equal strata of every assumption. */
  readonly latin: boolean
  readonly measures: readonly Measure[]
  /** Hears how many are done, every thousand or so. */
  readonly about?: (done: number) => void
}

/** How often a check was asked, and how often satisfied. */
export interface CheckCount {
  readonly check: PlannedCheck
  readonly asked: number
  readonly satisfied: number
}

/** What a measure came to over the samples that have a value. */
export interface Spreaded {
  readonly measure: Measure
  readonly count: number
  readonly mean: number
  /** Of the sample: divided by one less than the count. */
  readonly deviation: number
  /** At 2.5, 5, 50, 95 and 97.5 %, interpolated between neighbours. */
  readonly quantiles: readonly { readonly share: number; readonly value: number }[]
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
export function preparedSamples(plan: Plan): { readonly variables: readonly Ranged[]; readonly runs: Varied } {
  const variables = assumptionsOf(plan).variables.filter(isRanged)
  const runs = varied(
    plan,
    variables.map(({ entity }) => entity),
  )
  return { variables, runs }
}

type Ranged = Variable & { readonly range: NonNullable<Variable['range']> }

const isRanged = (variable: Variable): variable is Ranged => variable.range !== undefined

/**
 * Draws every assumption that has a range, independently of each other, so many times, and counts what comes of it; all others as written.
 * The same seed gives the same numbers. Second methods are left out.
 */
export function sample({ variables, runs }: ReturnType<typeof preparedSamples>, options: SampleOptions): Sampled {
  const { samples, measures, about } = options
  const watch = watchOf(runs)
  const drawn = drawer(variables, runs, options)
  const counts = watch.checks.map(() => ({ asked: 0, satisfied: 0 }))
  const values = measures.map(() => new Float64Array(samples))
  let [kept, lost, allSatisfied] = [0, 0, 0]
  for (let index = 0; index < samples; index += 1) {
    if (index % 1000 === 0) about?.(index)
    const slots = runs.at(drawn(index))
    if (watch.isLost(slots)) {
      lost += 1
      continue
    }
    let all = true
    for (const [at, check] of watch.checks.entries()) {
      const state = watch.state(check, slots)
      const count = counts[at]
      if (state === 'not asked' || !count) continue
      count.asked += 1
      if (state === 'satisfied') count.satisfied += 1
      else all = false
    }
    if (all) allSatisfied += 1
    for (const [at, { read }] of measures.entries()) (values[at] as Float64Array)[kept] = read(slots)
    kept += 1
  }
  return {
    variables,
    samples,
    lost,
    allSatisfied,
    checks: watch.checks.map((check, at) => ({ check, asked: 0, satisfied: 0, ...counts[at] })),
    measures: measures.map((measure, at) => spreadOf(measure, (values[at] as Float64Array).subarray(0, kept))),
  }
}

/** The values of one sample after another; the array is lent. */
function drawer(
  variables: readonly Ranged[],
  { base }: Varied,
  { samples, seed, spread, coverage = usualCoverage, latin }: SampleOptions,
): (index: number) => readonly number[] {
  const shares: Shares = sharesFrom(seed)
  const columns = latin ? variables.map(() => stratified(samples, shares)) : undefined
  const modes = variables.map(({ entity }) => base[entity.slot] as number)
  const values = new Array<number>(variables.length).fill(0)
  return index => {
    for (const [at, variable] of variables.entries()) {
      const share = columns ? ((columns[at] as Float64Array)[index] as number) : shares()
      values[at] = valueAt(variable, { share, spread, coverage, mode: modes[at] as number })
    }
    return values
  }
}

function spreadOf(measure: Measure, all: Float64Array): Spreaded {
  const sorted = all.filter(Number.isFinite).sort()
  const count = sorted.length
  const [least = Number.NaN] = sorted
  // About the least, so that what does not move has no spread at all.
  const mean = sorted.reduce((sum, value) => sum + (value - least) / count, least)
  const deviation = Math.sqrt(sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, count - 1))
  const quantiles =
    count === 0 ? [] : [0.025, 0.05, 0.5, 0.95, 0.975].map(share => ({ share, value: quantile(sorted, share) }))
  return { measure, count, mean, deviation, quantiles }
}

/** Linear between the neighbours of rank 1 + (n - 1) p: Hyndman and Fan, Am. Stat. 50 (1996), definition 7. */
function quantile(sorted: Float64Array, share: number): number {
  const rank = (sorted.length - 1) * share
  const below = Math.floor(rank)
  const [low, high] = [sorted[below] as number, sorted[Math.min(below + 1, sorted.length - 1)] as number]
  return low + (high - low) * (rank - below)
}
