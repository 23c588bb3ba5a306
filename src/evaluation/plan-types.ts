import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Formula } from '../formula/types.ts'
import type { Notebook } from '../notebook/types.ts'
import type { System } from '../quantity/types.ts'
import type { Entity, Named } from './named.ts'
import type { PlannedBlock } from './planned-block.ts'
import type { Operands, PlannedLine } from './planned-line.ts'

export type * from './named.ts'
export type * from './planned-block.ts'
export type * from './planned-line.ts'

/** One thing to do when the numbers are known. `second` marks what studies leave out: second methods that no first value rests on. */
export interface Op {
  readonly run: (slots: Float64Array) => unknown
  readonly second: boolean
  /** Slots that must all hold 1; else it does nothing. */
  readonly guards: readonly number[]
  /** Every slot it may look at, its guards among them. */
  readonly reads: readonly number[]
  /** Every slot it may change. */
  readonly writes: readonly number[]
  /** The same as `run`, said so that a study can do it for many runs at a time; nothing for what is done run by run. */
  readonly does?: Doing
  /** A numerical method: what a study counts before it begins. */
  readonly solves?: true
}

/** The things that ops do most. */
export type Doing =
  /** Puts a formula's value into a slot; a truth is not settled. */
  | {
      readonly kind: 'value'
      readonly slot: number
      readonly formula: Formula
      readonly operands: Operands
      readonly truth: boolean
    }
  /** Puts 0 into `alive` where the number in a slot does not keep a bound. */
  | { readonly kind: 'stop'; readonly slot: number; readonly keeps: (si: number) => boolean; readonly alive: number }
  /** Puts NaN into `slots` where `alive` does not hold 1. */
  | { readonly kind: 'forget'; readonly alive: number; readonly slots: readonly number[] }

/** A range an input must keep, judged before its block's steps. */
export interface PlannedRange {
  readonly entity: Entity
  readonly block: number
  readonly refuses: boolean
  readonly keeps: (value: number) => boolean
  readonly says: string
  readonly alive: number
}

/** Names, dimensions and order, known before any number: made once a text. */
export interface Plan {
  readonly notebook: Notebook
  readonly system: System
  readonly slots: number
  /** Starting numbers: typed values stand in their slots, the rest is NaN. */
  readonly start: Float64Array
  readonly ops: readonly Op[]
  readonly blocks: readonly (PlannedBlock | undefined)[]
  readonly names: ReadonlyMap<string, Named>
  readonly ranges: readonly PlannedRange[]
  /** Every line in the order of evaluation. */
  readonly trail: readonly PlannedLine[]
  /** Stated numbers that a choice was taken from, each with the first input that took it: they stand for a word, so no study moves them. */
  readonly chosen: ReadonlyMap<Entity, string>
  readonly diagnostics: readonly Diagnostic[]
  /** What could not be planned: a key, or a block's name, to the fault that stopped it. */
  readonly broken: ReadonlyMap<string, Diagnostic>
}
