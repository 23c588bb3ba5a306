import { digitsOf, lastPlace } from '../quantity/number-print.ts'

const most = 8

/**
 * A ratio of demand to capacity for print: three decimals below 1, three figures above; more where it would otherwise print
 * as 1.00 beside a verdict of not satisfied, fewer where the printed demand and capacity do not give so many.
 */
export function ratioDigits(ratio: number, about: { readonly printed: number; readonly satisfied: boolean }): string {
  if (ratio === 0) return '0'
  const figures = ratio < 1 ? Math.max(1, 3 + Math.ceil(Math.log10(ratio))) : 3
  let digits = digitsOf(ratio, figures)
  for (let more = figures + 1; !about.satisfied && Number(digits) <= 1 && more <= most; more += 1)
    digits = digitsOf(ratio, more)
  for (let fewer = figures - 1; fewer > 0 && !closes(digits, about.printed); fewer -= 1) digits = digitsOf(ratio, fewer)
  return digits
}

const closes = (digits: string, printed: number): boolean =>
  Math.abs(printed - Number(digits)) <= lastPlace(digits) * (1 + 1e-9)
