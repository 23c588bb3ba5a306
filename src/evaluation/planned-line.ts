import type { Place } from '../diagnostic/diagnostic.ts'
import type { Compiled, Formula } from '../formula/types.ts'
import type { Solved } from '../modules/method.ts'
import type { CheckAspect, SolveStep, Step } from '../modules/module.ts'
import type { Citation } from '../modules/sources.ts'
import type { Table } from '../modules/table.ts'
import type { Unit } from '../quantity/types.ts'
import type { Entity, Points, Row } from './named.ts'

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
