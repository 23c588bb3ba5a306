import { renderTex } from './render-tex.ts'

/**
 * Room for one line of a step, in em of its formulas: before the equals signs, behind them within their own column, and behind them
 * where the equation runs under the words. Held by the style sheet; a test measures them.
 */
export const room = { symbol: 3.5, column: 22.5, across: 51 } as const

/** Room behind the equals signs. */
export type Column = number

const least = 0.7

/**
 * The size, at most 1, at which the widest part that cannot be broken fits its column. Formulas are broken at their operators
 * first: only a part that is one box (a wide fraction or root) makes them smaller.
 */
export function fittingSize(tex: string, column: Column = room.across): number {
  const { widest } = renderTex(tex, true).widths
  return widest <= column ? 1 : Math.max(least, Math.floor((column / widest) * 100) / 100)
}

/** How wide formulas are on one line beside each other, with so much room between them, in em. */
export function widthTogether(texts: readonly string[], between: number): number {
  const whole = texts.reduce((sum, tex) => sum + renderTex(tex, true).widths.whole, 0)
  return whole + between * (texts.length - 1)
}

/** Whether a formula is higher than a line: two such below each other cost more than one across. */
export const isTall = (tex: string): boolean => /\\[dt]?frac|\\sum/.test(tex)
