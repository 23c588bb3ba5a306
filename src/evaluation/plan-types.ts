import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import type { Compiled, Formula, Kind } from '../formula/types.ts'
import type { Solved } from '../modules/method.ts'
import type { Caution, CheckAspect, Comparison, Limit, Module, SolveStep, Step } from '../modules/module.ts'
import type { Citation } from '../modules/sources.ts'
import type { Table } from '../modules/table.ts'
import type { Assumption, Notebook } from '../notebook/types.ts'
import type { Dimension, System, Unit } from '../quantity/types.ts'

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

export type Named = Entity | Word | Points | Rows

/** An input made ready for its module. */
export type PlannedInput =
  | { readonly kind: 'number'; readonly entity: Entity; readonly taken: boolean; readonly line?: PlannedFormula }
  | {
      readonly kind: 'word'
      readonly text: string
      readonly from?: Word
      readonly taken: boolean
      readonly place: Place
    }
  | { readonly kind: 'absent' }
  | { readonly kind: 'rows'; readonly rows: readonly ReadonlyMap<string, PlannedInput>[]; readonly place: Place }

/** Operands by their name in the formula. */
export type Operands = ReadonlyMap<string, Entity | readonly Entity[] | Points>

interface PlannedBase {
  /** Slots that must all hold 1 for the line to be evaluated. */
  readonly guards: readonly number[]
  readonly says: string
  readonly source?: Citation
  readonly row?: Row
  /** The module's step that it is of, where it is a row's: the lines of one step share a number. */
  readonly ofStep?: Step
  readonly place: Place
}

export interface PlannedFormula extends PlannedBase {
  readonly kind: 'formula'
  readonly gives: Entity
  readonly formula: Formula
  readonly operands: Operands
  readonly compiled: Compiled
}

export interface PlannedLook extends PlannedBase {
  readonly kind: 'look'
  readonly gives: Entity
  readonly table: Table
  /** The row's key: a fixed index on an axis of words, or the value looked up. */
  readonly rowKey: number | Entity
  readonly columnKey?: number | Entity
  /** The unit the table's cells are in. */
  readonly tableUnit: Unit
  /** Keys of the choices whose words picked a row or a column. */
  readonly picks: readonly string[]
}

export interface PlannedBranch extends PlannedBase {
  readonly kind: 'branch'
  /** Numbers decide: the slot of truth. */
  readonly test?: {
    readonly formula: Formula
    readonly operands: Operands
    readonly slot: number
    readonly compiled: Compiled
    /** The guards of both sides. */
    readonly sides: readonly number[]
  }
  /** Words decide: which side, and why. */
  readonly chosen?: { readonly holds: boolean; readonly because: string; readonly by: string }
}

export interface PlannedSolve extends PlannedBase {
  readonly kind: 'solve'
  readonly step: SolveStep
  readonly takes: readonly {
    readonly name: string
    readonly says: string
    readonly value: Entity | readonly Entity[] | string
  }[]
  readonly gives: readonly { readonly name: string; readonly entity: Entity }[]
  /** The answer for the numbers now in the slots; kept by its inputs. */
  readonly solve: (slots: Float64Array) => Solved
}

export interface PlannedCheck extends PlannedBase {
  readonly kind: 'check'
  readonly name: string
  readonly formula: Formula
  readonly operands: Operands
  readonly slot: number
  readonly compiled: Compiled
  readonly aspect?: CheckAspect
  /** The two sides where it is one comparison. */
  readonly sides?: {
    readonly demand: Compiled
    readonly capacity: Compiled
    readonly unit: Unit
    readonly demandLeft: boolean
  }
}

export type PlannedLine = PlannedFormula | PlannedLook | PlannedBranch | PlannedSolve | PlannedCheck

/** A condition made ready: known at once, or a slot of truth with the numbers it rests on. */
export type Judged = { readonly known: boolean } | { readonly slot: number; readonly operands: readonly Entity[] }

export interface PlannedLimit {
  readonly limit: Limit
  readonly judged: Judged
  readonly place: Place
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
  /** Where a word came from an assumption. */
  readonly word?: Word
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

/** One thing to do when the numbers are known. `second` marks what studies leave out: second methods that no first value rests on. */
export interface Op {
  readonly run: (slots: Float64Array) => unknown
  readonly second: boolean
  /** Every slot it may look at, its guards among them. */
  readonly reads: readonly number[]
  /** Every slot it may change. */
  readonly writes: readonly number[]
  /** A value worked out by one formula, for studies that work out many at a time. */
  readonly value?: PlannedValue
  /** A numerical method: what a study counts before it begins. */
  readonly solves?: true
}

/** A formula and the slot its value goes to; a truth is not settled. */
export interface PlannedValue {
  readonly guards: readonly number[]
  readonly slot: number
  readonly formula: Formula
  readonly operands: Operands
  readonly truth: boolean
}

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
  readonly diagnostics: readonly Diagnostic[]
  /** What could not be planned: a key, or a block's name, to the fault that stopped it. */
  readonly broken: ReadonlyMap<string, Diagnostic>
}
