import type { Condition } from './condition.ts'
import type { Limit } from './limit.ts'
import type { Step } from './step.ts'

/**
 * The independent method. Its steps see the module's inputs and steps, and may be checks as well; `compare` says which results must
 * agree, how well and why.
 */
export interface Second {
  readonly title: string
  readonly says: string
  /**
   * Limits of this method alone, over its own steps too: exceeded, they cast doubt on its own checks. One that refuses leaves this
   * method out and stops nothing else; it stands before those that say less.
   */
  readonly limits?: readonly Limit[]
  /** Evaluated only when this holds; otherwise the package says why there is no second method here. */
  readonly when?: { readonly condition: Condition; readonly otherwise: string }
  readonly steps: readonly Step[]
  readonly compare: readonly Comparison[]
}

/** Two answers that must agree, and how well. */
export interface Comparison {
  readonly first: string
  readonly second: string
  /** Largest relative difference |second - first| / |first| that counts as agreement, 0 to 1. */
  readonly band: number
  readonly says: string
  readonly when?: Condition
}
