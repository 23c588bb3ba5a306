import type { Measure } from './measure.ts'

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

/** The spread of a measure's values; those that are no number do not count. */
export function spreadOf(measure: Measure, all: Float64Array): Spreaded {
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
