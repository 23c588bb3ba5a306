/** A source that a step, table or limit cites. */
export interface Source {
  /** The short form at a step's margin: `IS 456`. */
  readonly short: string
  /** The full entry of the reference list. */
  readonly entry: string
}
