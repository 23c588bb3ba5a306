import { dimensionless } from '../quantity/dimension.ts'
import type { Dimension, System } from '../quantity/types.ts'
import type { ValueKind } from './kind-words.ts'
import type { Kind, Node, Span } from './types.ts'

/** What the proof of one node asks of the proof of the whole. Where the kind is undefined, a fault has been said. */
export interface Prover {
  /** The system whose units messages speak of. */
  readonly system: System
  of(node: Node): Kind | undefined
  /** The kind of a node where one value must stand. */
  value(node: Node): ValueKind | undefined
  /** A value that is no temperature on a scale. */
  difference(node: Node, kind: ValueKind | undefined): ValueKind | undefined
  /** A value without a dimension; `of` says what it is, as the subject of a sentence. */
  plainNumber(node: Node, of: string): ValueKind | undefined
  /** A value of this dimension, where formulas reach it. */
  reached(dimension: Dimension, span: Span): ValueKind | undefined
  unlike(node: Extract<Node, { kind: 'arithmetic' | 'comparison' }>, sides: readonly [ValueKind, ValueKind]): undefined
  fault(span: Span, says: string, help?: string): undefined
  words(kind: Kind): string
}

export const plain: ValueKind = { kind: 'value', dimension: dimensionless }
