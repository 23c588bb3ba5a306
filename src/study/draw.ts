import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { mersenne } from 'pure-rand/generator/mersenne'
import { findRoot } from '../modules/numerics/find-root.ts'
import type { Variable } from './assumptions.ts'
import { normalQuantile } from './normal-quantile.ts'

/**
 * How an assumption is spread: evenly over its range; most likely at its value and least at the ends of the range; or normally, the range
 * being the interval about the mean that holds a stated share of the values.
 */
export type Spread = 'uniform' | 'triangular' | 'normal'

/** What a range holds of a normal distribution where nothing else is said: 1.96 standard deviations either way. */
export const usualCoverage = 0.95

/** Shares of unit probability, one at a time: at least 0 and below 1. */
export type Shares = () => number

/** The Mersenne Twister MT19937 (Matsumoto and Nishimura, 1998) from a seed: the same seed gives the same shares. */
export function sharesFrom(seed: number): Shares {
  const generator = mersenne(seed)
  return () => uniformFloat64(generator)
}

type Range = NonNullable<Variable['range']>

/**
 * The normal distribution of which the range holds the share `coverage`, with as much below it as above: its mean is the middle of the range.
 * It has no ends, so that values beyond the range are drawn too. Source: JCGM 100:2008 (GUM), 4.3.4 and 4.3.5; JCGM 101:2008, 6.4.7.
 */
export function normalOver({ from, to }: Range, coverage: number): { mean: number; deviation: number } {
  const mean = from + (to - from) / 2
  return { mean, deviation: (to - mean) / normalQuantile((1 + coverage) / 2) }
}

/** The share of that distribution which lies on the other side of nought, where the range has but one; nought where it has both. */
export function beyondNought(range: Range, coverage: number): number {
  const { mean, deviation } = normalOver(range, coverage)
  if (range.from * range.to < 0 || deviation === 0) return 0
  const deviate = -Math.abs(mean) / deviation
  const least = normalQuantile(leastShare)
  return deviate <= least ? 0 : findRoot(share => normalQuantile(share) - deviate, { from: leastShare, to: 0.5 }).root
}

/** The least share that is drawn: `Shares` may give nought, below which no normal value lies. */
const leastShare = 2 ** -54

/**
 * The value below which `share` of the spread lies. Triangular: the mode is the value, or the nearer end of the range where it lies outside.
 */
export function valueAt(
  { range }: Variable & { readonly range: Range },
  about: { readonly share: number; readonly spread: Spread; readonly mode: number; readonly coverage?: number },
): number {
  const { from, to } = range
  const { share, spread } = about
  const wide = to - from
  if (spread === 'normal') {
    const { mean, deviation } = normalOver(range, about.coverage ?? usualCoverage)
    return mean + deviation * normalQuantile(Math.max(share, leastShare))
  }
  if (spread === 'uniform') return from + wide * share
  const mode = Math.min(Math.max(about.mode, from), to)
  if (share * wide < mode - from) return from + Math.sqrt(share * wide * (mode - from))
  return to - Math.sqrt((1 - share) * wide * (to - mode))
}

/**
 * One share for each of so many samples from each of as many equal strata, in random order: one column of a Latin hypercube
 * (McKay, Beckman and Conover, Technometrics 21, 1979).
 */
export function stratified(samples: number, shares: Shares): Float64Array {
  const column = Float64Array.from({ length: samples }, (_, index) => (index + shares()) / samples)
  for (let index = samples - 1; index > 0; index -= 1) {
    const other = Math.floor(shares() * (index + 1))
    const [a, b] = [column[index] as number, column[other] as number]
    column[index] = b
    column[other] = a
  }
  return column
}
