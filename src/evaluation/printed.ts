import type { Formula } from '../formula/types.ts'
import type { Shown } from '../quantity/types.ts'

/** A value made ready for print in one place, with the page anchor of the step or assumption that made it. */
export interface Printed {
  /** How the name is typeset: `K_0`, `gamma'`. */
  readonly symbol: string
  readonly shown: Shown
  /** Anchor of its origin (`v-roof-M_x`, `v-site-cover`); absent for the line's own literals. */
  readonly to?: string
}

export interface Reference {
  readonly key: string
  /** Clause, table or equation. */
  readonly at: string
}

/** One formula with its numbers put in: what is printed is recomputed from these digits. */
export interface Substitution {
  readonly formula: Formula
  /** By name in the formula; a list name of `sum` has several. */
  readonly operands: ReadonlyMap<string, Printed | readonly Printed[]>
  /** The formula that the numbers are put into, where it is not the one in symbols: an interpolation written out. */
  readonly numbers?: Formula
  /** True: numbers stand without units because all units are coherent. */
  readonly bare: boolean
}
