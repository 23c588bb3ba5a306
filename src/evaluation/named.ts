import type { Place } from '../diagnostic/diagnostic.ts'
import type { Kind } from '../formula/types.ts'
import type { Dimension, Unit } from '../quantity/types.ts'

/** Digits and unit as the author typed them. */
export interface Typed {
  readonly digits: string
  readonly unit: Unit
}

/** Which row of a list something belongs to; `index` counts from 0. */
export interface Row {
  readonly list: string
  readonly index: number
  readonly of: number
  readonly label: string
  /** A part that the method made: nothing but its number tells it from the others. */
  readonly made?: true
}

/** One named number of the notebook: known, with dimension and unit, before it has a value. */
export interface Entity {
  readonly kind: 'number'
  /** `roof.M_x`; a row's value is `roof.n_2`. */
  readonly key: string
  readonly name: string
  /** Index in `notebook.blocks`. */
  readonly block: number
  readonly origin: 'assumption' | 'input' | 'step'
  readonly slot: number
  readonly dimension: Dimension
  readonly point: boolean
  readonly unit: Unit
  readonly symbol: string
  readonly says: string
  readonly place: Place
  readonly row?: Row
  /** Set where the value is the author's own characters, so that they print as typed. */
  readonly typed?: Typed
  /** Set where it is another value unchanged. */
  readonly same?: Entity
}

/** A short text of the author's: an assumption that is a choice. */
export interface Word {
  readonly kind: 'word'
  readonly key: string
  readonly name: string
  readonly block: number
  readonly text: string
  readonly place: Place
}

/** Points of an author's own table, for `interpolate`. */
export interface Points {
  readonly kind: 'points'
  readonly key: string
  readonly name: string
  readonly block: number
  /** Dimensions of both columns, and whether they hold temperatures on a scale. */
  readonly kinds: Omit<Extract<Kind, { kind: 'table' }>, 'kind'>
  readonly x: readonly number[]
  readonly y: readonly number[]
  /** The points as the author typed them. */
  readonly typed: readonly { readonly x: Typed; readonly y: Typed }[]
  readonly remark: string
  readonly place: Place
}

/** The values of one name in all rows of a list: `stack.n`. */
export interface Rows {
  readonly kind: 'rows'
  readonly key: string
  readonly name: string
  readonly block: number
  readonly entities: readonly Entity[]
  readonly place: Place
}

/** What a key of the notebook stands for. */
export type Named = Entity | Word | Points | Rows
