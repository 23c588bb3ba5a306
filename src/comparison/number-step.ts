import { literalOf } from '../evaluation/literal.ts'
import { readFormula } from '../formula/read-formula.ts'
import { digitsOf } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Step } from './change-types.ts'

/** A number or quantity as typed, if the text is one. */
export function numberIn(text: string) {
  const read = readFormula(text)
  return read.ok && !read.formula.to ? literalOf(read.formula.tree) : undefined
}

/** How far a typed number moved, where both texts are numbers of one dimension. */
export function stepBetween(old: string, now: string): Step | undefined {
  const [a, b] = [numberIn(old), numberIn(now)]
  if (!a || !b || a.dimension !== b.dimension || a.point !== b.point) return undefined
  const amount = inUnit(b.si, b.unit) - inUnit(a.si, b.unit)
  const share = a.point || a.si === 0 ? {} : { share: (b.si - a.si) / Math.abs(a.si) }
  return { amount: { digits: shortDigits(amount), unit: b.unit, exact: false }, ...share }
}

const most = 6

/** As few digits as tell the number to six figures. */
function shortDigits(value: number): string {
  const full = Number(value.toPrecision(most))
  for (let figures = 1; figures < most; figures += 1)
    if (Number(digitsOf(full, figures)) === full) return digitsOf(full, figures)
  return digitsOf(full, most)
}
