import { digitsOf, lastPlace } from '../quantity/number-print.ts'
import { tolerance } from '../quantity/tolerance.ts'

const most = 12

interface About {
  /** The ratio of the printed numbers. */
  readonly printed: number
  readonly satisfied: boolean
}

/**
 * A ratio of demand to capacity for print: three decimals below 1, three figures above; more where it would otherwise print
 * as 1.00 beside a verdict of not satisfied, fewer where the printed demand and capacity do not give so many. Where no figures
 * both close and agree with the verdict, it is the ratio of the printed numbers, which a reader finds.
 */
export function ratioDigits(ratio: number, about: About): string {
  if (ratio === 0) return '0'
  const figures = enoughFigures(ratio, about)
  for (let fewer = figures; fewer > 0; fewer -= 1) {
    const digits = digitsOf(ratio, fewer)
    if (mustExceed(ratio, about) && fewer < figures && Number(digits) <= 1) break
    if (closes(digits, about.printed)) return digits
  }
  const { printed } = about
  const ours = Number.isFinite(printed) && printed > 0 ? printed : ratio
  return digitsOf(ours, enoughFigures(ours, about))
}

/** So many figures that the ratio stands on the side of 1 that its verdict is on. */
function enoughFigures(ratio: number, about: About): number {
  const usual = ratio < 1 ? Math.max(1, 3 + Math.ceil(Math.log10(ratio))) : 3
  let figures = usual
  while (mustExceed(ratio, about) && Number(digitsOf(ratio, figures)) <= 1 && figures < most) figures += 1
  return figures
}

/** A demand equal to its capacity is short of a `<` and has the ratio 1; any other that is not satisfied exceeds 1. */
const mustExceed = (ratio: number, { satisfied }: About): boolean => !satisfied && ratio > 1 + tolerance

const closes = (digits: string, printed: number): boolean =>
  Math.abs(printed - Number(digits)) <= lastPlace(digits) * (1 + 1e-9)
