import type { Place } from '../diagnostic/diagnostic.ts'
import type { CheckAspect } from '../modules/module.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import type { Printed, Reference, Substitution } from './printed.ts'

/** Which of how many rows, counted from 1; its label, empty where it has none. */
export interface PrintedRow {
  readonly index: number
  readonly of: number
  readonly label: string
  readonly made?: true
}

/** What a printed line of any kind has. */
export interface LineBase {
  /** Anchor on the page: `v-roof-M_x`, `b-roof-check-4-11`. */
  readonly id: string
  /** `4.07`. */
  readonly number: string
  readonly says: string
  readonly reference?: Reference
  /** Which row of a list it belongs to, where it does: number and label. */
  readonly row?: PrintedRow
  readonly place: Place
}

/** symbol = formula = numbers = result. */
export interface FormulaLine extends LineBase {
  readonly kind: 'formula'
  readonly name: string
  readonly symbol: string
  readonly working: Substitution
  readonly result: Shown
  /** True where fewer figures are shown because the line is a difference of nearly equal numbers. */
  readonly fewer: boolean
}

/** One axis of a look-up: the key, and the printed keys on both sides of it (equal where it stands on one). */
export interface LookedAxis {
  readonly says: string
  /** The choice's words, or the value that was looked up. */
  readonly key: string | Printed
  readonly lower: string
  readonly upper: string
  readonly unit?: Unit
}

/** One linear interpolation, as a formula whose operands are exact table entries and keys. */
export interface Interpolated {
  readonly says: string
  readonly working: Substitution
  readonly result: Shown
}

/** A value from a published table, with its neighbourhood. */
export interface LookLine extends LineBase {
  readonly kind: 'look'
  readonly name: string
  readonly symbol: string
  readonly title: string
  /** How sure we are of the table's entries. */
  readonly status: string
  readonly rowAxis: LookedAxis
  readonly columnAxis?: LookedAxis
  /** Printed cells: rows lower, upper by columns lower, upper; one where an axis stands on a key. */
  readonly corners: readonly (readonly string[])[]
  readonly unit: Unit
  readonly interpolations: readonly Interpolated[]
  readonly result: Shown
}

/** A condition and the side it chose. */
export interface BranchLine extends LineBase {
  readonly kind: 'branch'
  readonly holds: boolean
  /** Over numbers; absent for a choice, whose words are then in `because`. */
  readonly working?: Substitution
  readonly because?: string
}

/** Values from a numerical method. Not recomputed by pencil: `verified` says how it was verified. */
export interface SolveLine extends LineBase {
  readonly kind: 'solve'
  readonly title: string
  readonly method: string
  readonly takes: readonly { readonly says: string; readonly value: string | Printed | readonly Printed[] }[]
  readonly gives: readonly {
    readonly name: string
    readonly id: string
    readonly says: string
    readonly printed: Printed
  }[]
  readonly verified: string
}

/** A comparison. Where it has one demand and one capacity their ratio is given. */
export interface CheckLine extends LineBase {
  readonly kind: 'check'
  readonly name: string
  readonly working: Substitution
  readonly demand?: Shown
  readonly capacity?: Shown
  /** demand / capacity, three decimals; absent where capacity is not positive or the check is a logic of several. */
  readonly ratio?: { readonly value: number; readonly shown: Shown }
  readonly satisfied: boolean
  /** Absent: strength, stability or service. */
  readonly aspect?: CheckAspect
  /** Why a satisfied check may not be leant on; empty where nothing speaks against it. */
  readonly doubts: readonly Doubt[]
  /** What it came to in words: `satisfied`, `satisfied but outside limits`, `not satisfied`. */
  readonly verdict: string
}

/** A limit of the method that makes a check is exceeded; the second method of its block disagrees with the first. */
export type Doubt = 'outside limits' | 'methods differ'

export type Line = FormulaLine | LookLine | BranchLine | SolveLine | CheckLine
