import type { Compiled } from './types.ts'

/**
 * What an operation compiles to: a number known now, a slot read as it is, a shape of a few such leaves that can still grow into a larger
 * one, or a function.
 */
export type Part =
  | { readonly kind: 'constant'; readonly value: number }
  | { readonly kind: 'slot'; readonly at: number }
  | {
      readonly kind: 'shape'
      /** As in the tables of shapes: `(k*s)/s`. */
      readonly name: string
      readonly leaves: Leaves
    }
  | { readonly kind: 'closure'; readonly run: Compiled }

/** What stands in a shape, from left to right: `numbers` for its constants and slots, `inner` for its functions. */
export interface Leaves {
  readonly numbers: readonly number[]
  readonly inner: readonly Compiled[]
}
