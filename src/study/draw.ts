import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { mersenne } from 'pure-rand/generator/mersenne'
import type { Variable } from './assumptions.ts'

/** How an assumption is spread over its range: evenly, or most likely at its value and least at the ends. */
export type Spread = 'uniform' | 'triangular'

/** Shares of unit probability, one at a time: at least 0 and below 1. */
export type Shares = () => number

/** The Mersenne Twister MT19937 (Matsumoto and Nishimura, 1998) from a seed: the same seed gives the same shares. */
export function sharesFrom(seed: number): Shares {
  const generator = mersenne(seed)
  return () => uniformFloat64(generator)
}

/**
 * The value below which `share` of the spread lies. Triangular: the mode is the value, or the nearer end of the range where it lies outside.
 */
export function valueAt(
  { range }: Variable & { readonly range: NonNullable<Variable['range']> },
  about: { readonly share: number; readonly spread: Spread; readonly mode: number },
): number {
  const { from, to } = range
  const { share, spread } = about
  const wide = to - from
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
