import { digitsOf, plainNumber } from '../quantity/number-print.ts'

/** A ratio in percent for a sentence: `2.1 %`. */
export function percentText(ratio: number): string {
  if (ratio === 0) return '0 %'
  return `${plainNumber(digitsOf(ratio * 100, 2))} %`
}
