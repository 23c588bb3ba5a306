import type { Compiled } from './types.ts'

/** What a node compiles to: a number known now, a slot read as it is, or a function. */
export type Part =
  | { readonly kind: 'constant'; readonly value: number }
  | { readonly kind: 'slot'; readonly at: number }
  | { readonly kind: 'closure'; readonly run: Compiled }

export const constant = (value: number): Part => ({ kind: 'constant', value })
export const slot = (at: number): Part => ({ kind: 'slot', at })

export const isConstant = (part: Part): part is Extract<Part, { kind: 'constant' }> => part.kind === 'constant'
