import type { Condition } from './condition.ts'
import type { DimensionName } from './dimension-name.ts'
import type { UnitChoice } from './input.ts'
import type { Method } from './method.ts'
import type { Citation } from './sources.ts'
import type { Table } from './table.ts'

/** One line of working: `name = formula`. Names are inputs, earlier steps, and in `each` the fields of the row. */
export interface FormulaStep {
  readonly kind: 'step'
  readonly name: string
  readonly formula: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
  readonly source?: Citation
}

/** A value read from a published table. `row` and `column` name a choice (axis of words) or a value (axis of numbers). */
export interface LookStep {
  readonly kind: 'look'
  readonly name: string
  readonly table: Table
  readonly row: string
  readonly column?: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
}

/** The same steps for each row of a list. Outside, `list.name` is the list of the rows' values: `sum(layers.n)`. */
export interface EachStep {
  readonly kind: 'each'
  readonly list: string
  readonly steps: readonly Step[]
  /** The list is none of the author's: the method cuts something into so many parts. */
  readonly made?: MadeRows
}

/** So many rows, and the name by which their steps call the number of a row, counted from 1. */
export interface MadeRows {
  readonly count: number
  readonly number: string
}

/**
 * Steps for each two neighbouring rows of a list of two rows or more, for what lies between them. They belong to the later of the two,
 * so that the first row has none: `sum(points.area)` sums one value fewer than there are rows. A field or step of the earlier row is
 * called by its name with `prev_` before it: `z - prev_z`.
 */
export interface PairsStep {
  readonly kind: 'pairs'
  readonly list: string
  readonly steps: readonly Step[]
}

/** Inside `each`: in the first row `name = first`; in later rows `name` = the value of `next` in the row before. */
export interface CarriedStep {
  readonly kind: 'carried'
  readonly name: string
  readonly first: string
  readonly next: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
}

/** After `each`: `name` = the value of `of` in the first or last row. */
export interface TakeStep {
  readonly kind: 'take'
  readonly name: string
  readonly list: string
  readonly of: string
  readonly from: 'first' | 'last'
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
}

/** A branch. Both sides are proved; one is evaluated and printed, after a line with the condition that chose it. */
export interface WhenStep {
  readonly kind: 'when'
  readonly condition: Condition
  /**
   * Says what the condition means, for print: `the wall is below the water level`. Without it the branch has no line: for a choice or
   * an optional input, which the list of given values shows, where an earlier line or the steps themselves tell what was chosen; for
   * numbers, where a check of the same comparison stands before. Over a choice it reads true of the side `yes` and is printed only there.
   */
  readonly says?: string
  readonly yes: readonly Step[]
  readonly no: readonly Step[]
}

/** A value that a numerical method gives, as it is named and shown here. */
export interface Given {
  readonly dimension: DimensionName
  readonly name: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
  /** A plain whole number, as the day of a month: it is printed without noughts behind it. */
  readonly whole?: true
}

/** What a method takes: a formula, a list as `{ list: 'diagram.z' }`, or a value that only some choices give, where they do. */
export type Taken = string | { readonly list: string } | { readonly ifGiven: string }

/** A numerical method: what goes in, what comes out. */
export interface SolveStep {
  readonly kind: 'solve'
  readonly method: Method
  readonly takes: Readonly<Record<string, Taken>>
  /** Words the method takes: the name of a choice, or a fixed word. */
  readonly words?: Readonly<Record<string, { readonly choice: string } | { readonly word: string }>>
  /** The method's own output name to the value it gives here. */
  readonly gives: Readonly<Record<string, Given>>
  readonly says: string
  readonly source?: Citation
}

/** What a check is about: strength, stability and service by default; `geometry`: whether things fit. The cover ranks the two apart. */
export type CheckAspect = 'strength' | 'geometry'

/** A comparison `demand <= capacity` or `capacity >= demand`, satisfied or not. */
export interface CheckStep {
  readonly kind: 'check'
  readonly name: string
  readonly formula: string
  readonly says: string
  readonly aspect?: CheckAspect
  readonly source?: Citation
}

/** One thing that a module does, in the order of its book. */
export type Step =
  | FormulaStep
  | LookStep
  | EachStep
  | PairsStep
  | CarriedStep
  | TakeStep
  | WhenStep
  | SolveStep
  | CheckStep
