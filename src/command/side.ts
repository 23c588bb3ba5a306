import type { Evaluated } from './evaluated.ts'
import type { IssuedResults } from './package-editions.ts'

/** One side of a comparison with what it is called. */
export interface Side {
  readonly label: string
  readonly evaluated: Evaluated
  /** What a package that it was read from says of itself, where it was. */
  readonly issued?: IssuedResults
}
