import { renderTex } from './render-tex.ts'

/** Room for one line of a formula in the column of a step, in em of the formula. Held by the style sheet; a test measures it. */
export const formulaColumn = 27
const least = 0.7

/**
 * The size, at most 1, at which the widest part that cannot be broken fits its column. Formulas are broken at their operators
 * first: only a part that is one box (a wide fraction or root) makes them smaller.
 */
export function fittingSize(tex: string, column = formulaColumn): number {
  const { widest } = renderTex(tex, true).widths
  return widest <= column ? 1 : Math.max(least, Math.floor((column / widest) * 100) / 100)
}

/** Whether formulas fit on one line beside each other, with so much room between them, in em. */
export function fitTogether(texts: readonly string[], between: number): boolean {
  const whole = texts.reduce((sum, tex) => sum + renderTex(tex, true).widths.whole, 0)
  return whole + between * (texts.length - 1) < formulaColumn
}
