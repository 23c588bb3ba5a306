/**
 * A symmetric matrix kept as the lower band: row i holds columns i - `band` to i in `rows[i*(band+1) ...]`,
 * the diagonal last; places left of column 0 are zero.
 */
export type SymmetricBand = { readonly size: number; readonly band: number; readonly rows: Float64Array }

/** An empty (all zero) symmetric band matrix of `size` rows and half width `band`. */
export function symmetricBand(size: number, band: number): SymmetricBand {
  return { size, band, rows: new Float64Array(size * (band + 1)) }
}
