import type { Column } from '../formula/column-kernels.ts'
import type { Variable } from './assumptions.ts'
import { type Spread, sharesFrom, stratified, usualCoverage, valueAt } from './draw.ts'

/** How samples are drawn. */
export interface Draws {
  readonly samples: number
  readonly seed: number
  readonly spread: Spread
  /** What the range holds of a normal distribution; `usualCoverage` where left out. */
  readonly coverage?: number
  /** One sample from each of as many equal strata of every assumption. */
  readonly latin: boolean
}

/** An assumption with a range to draw from. */
export type Ranged = Variable & { readonly range: NonNullable<Variable['range']> }

export const isRanged = (variable: Variable): variable is Ranged => variable.range !== undefined

/** The values of the next samples, a column of `length` rows for each variable; the columns are lent. */
export function drawer(
  variables: readonly Ranged[],
  about: Draws & { readonly base: Float64Array; readonly length: number },
): (from: number, rows: number) => readonly Column[] {
  const { samples, seed, spread, coverage = usualCoverage, latin, base, length } = about
  const shares = sharesFrom(seed)
  const strata = latin ? variables.map(() => stratified(samples, shares)) : undefined
  const values = variables.map(() => new Float64Array(length))
  const draws = variables.map((variable, at) => {
    const mode = base[variable.entity.slot] as number
    const column = values[at] as Column
    const stratum = strata?.[at]
    return (row: number, index: number): void => {
      const share = stratum ? (stratum[index] as number) : shares()
      column[row] = valueAt(variable, { share, spread, coverage, mode })
    }
  })
  return (from, rows) => {
    for (let row = 0; row < rows; row += 1) for (const draw of draws) draw(row, from + row)
    return values
  }
}
