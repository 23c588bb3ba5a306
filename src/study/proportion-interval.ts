/** The normal deviate that leaves 2.5 % on either side. */
const deviate = 1.959963984540054

/**
 * The share `hits / trials` with its 95 % confidence interval by Wilson's score, without correction for continuity.
 * Refuses (throws) no trials, and more hits than trials.
 * Source: E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209; R. G. Newcombe, Stat. Med. 17 (1998) 857, method 3 (memory).
 */
export function proportionInterval(hits: number, trials: number): { share: number; low: number; high: number } {
  if (!(trials > 0 && hits >= 0 && hits <= trials)) throw new RangeError(`no share of ${hits} in ${trials}`)
  const share = hits / trials
  const square = deviate ** 2
  const middle = (2 * hits + square) / (2 * (trials + square))
  const half = (deviate / (trials + square)) * Math.sqrt((hits * (trials - hits)) / trials + square / 4)
  return { share, low: hits === 0 ? 0 : middle - half, high: hits === trials ? 1 : middle + half }
}
