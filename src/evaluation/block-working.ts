import type { Place } from '../diagnostic/diagnostic.ts'
import type { Drawing } from '../modules/sketch.ts'
import type { Shown } from '../quantity/types.ts'
import type { Printed, Reference } from './printed.ts'
import type { CheckLine, Line, PrintedRow } from './printed-line.ts'

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
  readonly row?: PrintedRow
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
