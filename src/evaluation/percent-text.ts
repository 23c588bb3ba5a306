import { digitsOf, plainNumber } from '../quantity/number-print.ts'

/** Below this a difference is the rounding of the arithmetic, and its digits say nothing. */
const rounding = 1e-9

/** A ratio in percent for a sentence: `2.1 %`; `under 10⁻⁷ %` where it is rounding only. */
export function percentText(ratio: number): string {
  if (ratio === 0) return '0 %'
  if (ratio < rounding) return 'under 10⁻⁷ %'
  return `${plainNumber(digitsOf(ratio * 100, 2))} %`
}
