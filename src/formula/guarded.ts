/**
 * A quotient in which nothing is lost: divided by nought or by an infinity gives NaN. Everything else that could make an ordinary number of an
 * infinity is guarded too (powers, comparisons, min and max, exp, atan); sums, products and roots keep it.
 */
export const quotient = (a: number, b: number): number => (b !== 0 && Number.isFinite(b) ? a / b : Number.NaN)

/** A power; NaN to the power 0 stays NaN, and an infinity on either side does not become a number. */
export const raised = (a: number, b: number): number => (Number.isFinite(a) && Number.isFinite(b) ? a ** b : Number.NaN)

/** The smaller of two finite numbers; NaN where either is none. */
export const smaller = (a: number, b: number): number =>
  Number.isFinite(a) && Number.isFinite(b) ? Math.min(a, b) : Number.NaN

/** The larger of two finite numbers; NaN where either is none. */
export const larger = (a: number, b: number): number =>
  Number.isFinite(a) && Number.isFinite(b) ? Math.max(a, b) : Number.NaN
