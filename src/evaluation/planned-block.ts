import type { Place } from '../diagnostic/diagnostic.ts'
import type { Caution, Comparison, Limit, Module } from '../modules/module.ts'
import type { Citation } from '../modules/sources.ts'
import type { Assumption } from '../notebook/types.ts'
import type { Entity, Row, Typed, Word } from './named.ts'
import type { PlannedFormula, PlannedLine } from './planned-line.ts'

/** An input made ready for its module. */
export type PlannedInput =
  | { readonly kind: 'number'; readonly entity: Entity; readonly taken: boolean; readonly line?: PlannedFormula }
  | {
      readonly kind: 'word'
      readonly text: string
      /** The assumption, or the stated number, that it was taken from. */
      readonly from?: Word | Entity
      readonly taken: boolean
      readonly place: Place
    }
  | { readonly kind: 'absent' }
  | { readonly kind: 'rows'; readonly rows: readonly PlannedRow[]; readonly place: Place }

/** One row of a list: its fields by name. */
export interface PlannedRow {
  readonly row: Row
  readonly fields: ReadonlyMap<string, PlannedInput>
}

/** A condition made ready: known at once, or a slot of truth with the numbers it rests on. */
export type Judged = { readonly known: boolean } | { readonly slot: number; readonly operands: readonly Entity[] }

export interface PlannedLimit {
  readonly limit: Limit
  readonly judged: Judged
  readonly place: Place
  /** The row in which it was judged. */
  readonly row?: Row
}

export interface PlannedComparison {
  readonly compare: Comparison
  readonly first: Entity
  readonly second: Entity
  readonly applies: Judged
}

export interface PlannedSecond {
  readonly title: string
  readonly says: string
  readonly applies: Judged
  readonly otherwise: string
  readonly limits: readonly PlannedLimit[]
  readonly lines: readonly PlannedLine[]
  /** Those of its checks that rest on a step of the first method. */
  readonly leaning: ReadonlySet<PlannedLine>
  readonly comparisons: readonly PlannedComparison[]
  readonly shares: readonly Entity[]
}

/** An input as the author gave it, or as its default says. */
export interface PlannedGiven {
  /** As it is known outside the block: `edges`; a row's `material_2`. */
  readonly name: string
  readonly symbol: string
  readonly says: string
  readonly value: Entity | string
  /** Where a word came from an assumption, or from a number that is stated. */
  readonly word?: Word | Entity
  readonly taken: boolean
  /** Where the default that was taken stands. */
  readonly source?: Citation
  readonly row?: Row
  readonly place: Place
  /** Set where the author wrote a formula: the line that works it out. */
  readonly line?: PlannedFormula
}

export interface PlannedAssume {
  readonly kind: 'assume'
  readonly index: number
  readonly rows: readonly PlannedAssumption[]
}

export interface PlannedAssumption {
  readonly assumption: Assumption
  readonly named: Entity | Word
  readonly range?: { readonly from: Typed & { readonly si: number }; readonly to: Typed & { readonly si: number } }
  readonly measured?: (Typed & { readonly si: number }) | string
}

export interface PlannedCalc {
  readonly kind: 'calc'
  readonly index: number
  readonly module: Module
  readonly given: readonly PlannedGiven[]
  readonly lines: readonly PlannedLine[]
  readonly limits: readonly PlannedLimit[]
  readonly cautions: readonly { readonly caution: Caution; readonly judged: Judged }[]
  readonly second?: PlannedSecond
  /** Holds 1 while the block's steps may be evaluated. */
  readonly alive: number
  /** Words of its choices, by input name; a row's choice as `material_2`. */
  readonly words: ReadonlyMap<string, string>
  /** How many rows each list has. */
  readonly rows: ReadonlyMap<string, number>
  /** Names within the block, for the sketch: `x`, `x_2`. */
  readonly names: ReadonlyMap<string, Entity>
}

export interface PlannedWork {
  readonly kind: 'work'
  readonly index: number
  readonly lines: readonly PlannedLine[]
}

export type PlannedBlock = PlannedAssume | PlannedCalc | PlannedWork
