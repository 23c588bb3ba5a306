import type { Dimension, Unit } from '../quantity/types.ts'

/** Where a node stands in the formula's text: offsets in UTF-16 units. */
export interface Span {
  readonly start: number
  readonly end: number
}

/** The plain tree of a formula. Every node knows its span; operators know the operator's own span as `at`. */
export type Node =
  | { readonly kind: 'number'; readonly value: number; readonly text: string; readonly span: Span }
  /** A number with its unit, one node: `2 kN/m^2`. `value` is the number as typed, in `unit`; SI is `value * unit.factor`
   * (temperature points: `unit.offset` too). */
  | {
      readonly kind: 'quantity'
      readonly value: number
      readonly text: string
      readonly unit: Unit
      readonly span: Span
    }
  /** A bare unit, as in `f_ck / MPa`. */
  | { readonly kind: 'unit'; readonly unit: Unit; readonly span: Span }
  /** A local name or `block.name`. */
  | { readonly kind: 'name'; readonly name: string; readonly span: Span }
  | { readonly kind: 'pi'; readonly span: Span }
  | { readonly kind: 'negative'; readonly of: Node; readonly span: Span }
  | {
      readonly kind: 'arithmetic'
      readonly op: '+' | '-' | '*' | '/' | '^'
      readonly left: Node
      readonly right: Node
      readonly at: Span
      readonly span: Span
    }
  /** A comparison of two sides; a chain `a < b <= c` is narrowed to `(a < b) and (b <= c)`. */
  | {
      readonly kind: 'comparison'
      readonly op: Comparison
      readonly left: Node
      readonly right: Node
      readonly at: Span
      readonly span: Span
    }
  | {
      readonly kind: 'logic'
      readonly op: 'and' | 'or'
      readonly left: Node
      readonly right: Node
      readonly at: Span
      readonly span: Span
    }
  | { readonly kind: 'not'; readonly of: Node; readonly at: Span; readonly span: Span }
  | { readonly kind: 'call'; readonly fn: FunctionName; readonly args: readonly Node[]; readonly span: Span }

export type Comparison = '<' | '<=' | '>' | '>=' | '==' | '!='

export type FunctionName =
  | 'sqrt'
  | 'cbrt'
  | 'abs'
  | 'min'
  | 'max'
  | 'exp'
  | 'log'
  | 'log10'
  | 'sin'
  | 'cos'
  | 'tan'
  | 'asin'
  | 'acos'
  | 'atan'
  | 'atan2'
  | 'floor'
  | 'ceil'
  | 'round'
  | 'sum'
  | 'interpolate'

/** One formula, read once. `names` are its names in order of first use, without repeats. */
export interface Formula {
  readonly text: string
  readonly tree: Node
  /** The unit after `to`, where one stands, and its place. */
  readonly to?: Unit
  readonly toSpan?: Span
  readonly names: readonly string[]
}

/** Something wrong in a formula, placed in its text. */
export interface Fault {
  readonly rule:
    | 'formula-syntax'
    | 'formula-refused'
    | 'formula-limit'
    | 'name-unknown'
    | 'unit-unknown'
    | 'name-is-unit'
    | 'dimension-mismatch'
  readonly span: Span
  readonly says: string
  readonly help?: string
  /** The name that is unknown, so that the caller can offer the nearest one it knows. */
  readonly name?: string
}

export type Read = { readonly ok: true; readonly formula: Formula } | { readonly ok: false; readonly fault: Fault }

/**
 * What a name stands for when a formula is proved: one value, a list of values of one dimension, or a table; and what a formula comes to.
 * `point`: temperatures on a scale.
 */
export type Kind =
  | { readonly kind: 'value'; readonly dimension: Dimension; readonly point?: boolean }
  | { readonly kind: 'list'; readonly dimension: Dimension; readonly point?: boolean }
  | {
      readonly kind: 'table'
      readonly from: Dimension
      readonly to: Dimension
      /** True where that side of the table holds temperatures on a scale. */
      readonly fromPoint?: boolean
      readonly toPoint?: boolean
    }
  | { readonly kind: 'truth' }

export type Proof =
  | { readonly ok: true; readonly result: Kind }
  | { readonly ok: false; readonly faults: readonly Fault[] }

/** Where a name's number stands when a formula is compiled: one slot, the slots of a list, or the points of a table. */
export type Seat =
  | { readonly kind: 'slot'; readonly slot: number }
  | { readonly kind: 'slots'; readonly slots: readonly number[] }
  | { readonly kind: 'table'; readonly x: readonly number[]; readonly y: readonly number[] }

/** Numbers in, number out: SI numbers in slots. Comparisons and logic give 1 or 0; a NaN operand gives NaN. */
export type Compiled = (slots: Float64Array) => number
