/** A block with lines of some kind, planned or printed: assumptions have none, a calculation may have a second method's too. */
type Lined<T> =
  | { readonly kind: 'assume' }
  | { readonly kind: 'work'; readonly lines: readonly T[] }
  | { readonly kind: 'calc'; readonly lines: readonly T[]; readonly second?: { readonly lines: readonly T[] } }

/** The lines of a block's second method, in order; none where it has no such method. */
export const secondLinesOf = <T>(block: Lined<T>): readonly T[] =>
  block.kind === 'calc' ? (block.second?.lines ?? []) : []

/** Every line of a block in order, its second method's among them. */
export const linesOf = <T>(block: Lined<T>): readonly T[] =>
  block.kind === 'assume' ? [] : [...block.lines, ...secondLinesOf(block)]
