import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import type { Formula } from '../formula/types.ts'
import type { CheckAspect } from '../modules/module.ts'
import type { Drawing } from '../modules/sketch.ts'
import type { Shown, Unit } from '../quantity/types.ts'

/** A value made ready for print in one place, with the page anchor of the step or assumption that made it. */
export interface Printed {
  /** How the name is typeset: `K_0`, `gamma'`. */
  readonly symbol: string
  readonly shown: Shown
  /** Anchor of its origin (`step-4-07`, `assumption-3`, `given-4-w`); absent for the line's own literals. */
  readonly to?: string
}

export interface Reference {
  readonly key: string
  /** Clause, table or equation. */
  readonly at: string
}

/** One formula with its numbers put in: what is printed is recomputed from these digits. */
export interface Substitution {
  readonly formula: Formula
  /** By name in the formula; a list name of `sum` has several. */
  readonly operands: ReadonlyMap<string, Printed | readonly Printed[]>
  /** The formula that the numbers are put into, where it is not the one in symbols: an interpolation written out. */
  readonly numbers?: Formula
  /** True: numbers stand without units because all units are coherent. */
  readonly bare: boolean
}

interface LineBase {
  /** Anchor on the page: `step-4-07`. */
  readonly id: string
  /** `4.07`. */
  readonly number: string
  readonly says: string
  readonly reference?: Reference
  /** Which row of a list it belongs to, where it does: number and label. */
  readonly row?: { readonly index: number; readonly of: number; readonly label: string }
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

/** A row of the Given table. */
export interface GivenRow {
  readonly id: string
  readonly name: string
  readonly symbol: string
  readonly says: string
  /** The value, or the words of a choice or label. */
  readonly value: Shown | string
  /** Where it came from, for print: `A3`, `3.02`, `typed here`, `default`. */
  readonly from: string
  /** Anchor of the origin; absent where typed here. */
  readonly to?: string
  /** True where the author gave none and the module's default was taken. */
  readonly taken: boolean
  /** The source of the default that was taken; a value of the author's own has none. */
  readonly reference?: Reference
  readonly row?: { readonly index: number; readonly of: number; readonly label: string }
  readonly place: Place
}

export interface LimitLine {
  readonly says: string
  readonly kept: boolean
  readonly refuses: boolean
  /** Which of the two methods ends here. */
  readonly method: 'first' | 'second'
  readonly reference?: Reference
}

export interface ComparisonLine {
  readonly says: string
  readonly first: Printed
  readonly second: Printed
  /** |second - first| / |first|, as a number and in percent for print. */
  readonly difference: number
  readonly differenceShown: string
  readonly band: number
  readonly bandShown: string
  readonly agrees: boolean
}

/** An input or a step that both methods rest on; a step has its line's number. */
export interface Shared {
  readonly symbol: string
  readonly says: string
  readonly number?: string
  readonly to?: string
}

export interface SecondWorking {
  readonly title: string
  readonly says: string
  readonly lines: readonly Line[]
  readonly comparisons: readonly ComparisonLine[]
  /** What both methods use, from the two dependency graphs. */
  readonly shares: readonly Shared[]
  /** Set instead of lines where the second method does not apply to these inputs. */
  readonly absent?: string
}

interface BlockWorkingBase {
  readonly name: string
  /** `4`; assumption blocks have none. */
  readonly number: string
  /** Page anchor. */
  readonly id: string
  readonly place: Place
  /** Index in `notebook.blocks`. */
  readonly index: number
  /** False where an error stopped it; then what could not be evaluated is absent. */
  readonly complete: boolean
  /** Every check among its lines in order, its second method's too: who sums up checks reads them here. */
  readonly checks: readonly CheckLine[]
}

export interface AssumptionRow {
  readonly id: string
  /** `A3`. */
  readonly number: string
  readonly block: string
  readonly name: string
  readonly symbol: string
  readonly value: Shown | string
  readonly basis: string
  readonly status: 'confirmed' | 'hold'
  readonly closes: string
  readonly range?: { readonly from: Shown; readonly to: Shown; readonly inside: boolean }
  readonly measured?: Shown | string
  readonly evidence: string
  /** Lines and given rows that use it directly. */
  readonly users: readonly { readonly id: string; readonly number: string }[]
  readonly place: Place
}

export interface AssumeWorking extends BlockWorkingBase {
  readonly kind: 'assume'
  readonly rows: readonly AssumptionRow[]
}

export interface CalcWorking extends BlockWorkingBase {
  readonly kind: 'calc'
  readonly module: string
  readonly version: string
  readonly title: string
  readonly asks: string
  readonly code: string
  /** Symbols of the module by name, which its sentences mean by what stands in backticks. */
  readonly symbols: ReadonlyMap<string, string>
  readonly given: readonly GivenRow[]
  /** Inputs that the author wrote as formulas, worked out, then the module's steps in order. Checks stand in place. */
  readonly lines: readonly Line[]
  readonly limits: readonly LimitLine[]
  readonly cautions: readonly string[]
  readonly second?: SecondWorking
  readonly sketch?: Drawing
}

/** An author's own table, to interpolate in. */
export interface PointsTable {
  readonly name: string
  readonly says: string
  readonly points: readonly { readonly x: Shown; readonly y: Shown }[]
}

export interface WorkWorking extends BlockWorkingBase {
  readonly kind: 'work'
  readonly tables: readonly PointsTable[]
  readonly lines: readonly Line[]
}

export type BlockWorking = AssumeWorking | CalcWorking | WorkWorking

/** A mention in the author's text, answered: index is that of `notebook.mentions`. */
export type Answer =
  | { readonly kind: 'value'; readonly printed: Printed }
  | { readonly kind: 'word'; readonly text: string; readonly to: string }
  | { readonly kind: 'see'; readonly number: string; readonly title: string; readonly to: string }
  | { readonly kind: 'cite'; readonly key: string }
  | { readonly kind: 'unknown' }

/** A line of the design basis: what is asked, its value, and the checks that show it is met. */
export interface BasisRow {
  readonly what: string
  readonly value?: { readonly shown: Shown | string; readonly to?: string }
  readonly checks: readonly CheckLine[]
}

/** A line of the coverage ledger: answered by blocks, not applicable for a reason, or not covered. */
export interface CoverageLine {
  readonly key: string
  readonly wing: string
  readonly says: string
  readonly by: readonly (BlockAnchor & Pick<BlockWorking, 'checks'>)[]
  /** Why it does not apply, where no block answers it and the author says so. */
  readonly reason?: string
}

type BlockAnchor = Pick<BlockWorking, 'id' | 'number' | 'name'>

/** A value that goes to the drawings. */
export interface DrawingRow {
  readonly block: BlockAnchor
  readonly name: string
  readonly symbol: string
  readonly says: string
  readonly value: Shown | string
  readonly to?: string
}

/** A table to be handed on. A cell is words, or a number in the unit of its column. */
export interface ScheduleTable {
  readonly block: BlockAnchor
  readonly title: string
  readonly columns: readonly { readonly says: string; readonly unit?: string }[]
  readonly rows: readonly (readonly (string | { readonly digits: string })[])[]
}

/** A number that the author typed into a calc or work block, where no assumption gives it a basis. */
export interface TypedValue {
  /** Where it stands on the page. */
  readonly id: string
  /** Of its line, or of its block for an input. */
  readonly number: string
  readonly block: string
  readonly says: string
  readonly shown: Shown
}

/** Everything that is printed, with its digits chosen. Typesetting reads it and computes nothing. */
export interface Workings {
  /** In the author's order, one for each block of the notebook that could be planned. */
  readonly blocks: readonly BlockWorking[]
  readonly answers: readonly Answer[]
  /** Citation keys in order of first citation, the author's own among them, each with the places that cite it. */
  readonly references: readonly {
    readonly key: string
    readonly entry: string
    readonly short: string
    readonly cited: readonly { readonly id: string; readonly number: string }[]
  }[]
  /** Name to what its value is used by: anchors and numbers, for the way back. */
  readonly users: ReadonlyMap<string, readonly { readonly id: string; readonly number: string }[]>
  readonly basis: readonly BasisRow[]
  readonly coverage: readonly CoverageLine[]
  readonly drawing: readonly DrawingRow[]
  readonly schedules: readonly ScheduleTable[]
  /** In the order of the text. */
  readonly typed: readonly TypedValue[]
  readonly diagnostics: readonly Diagnostic[]
}
