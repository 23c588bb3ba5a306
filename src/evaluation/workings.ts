import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Shown } from '../quantity/types.ts'
import type { BlockWorking } from './block-working.ts'
import type { Printed } from './printed.ts'
import type { CheckLine } from './printed-line.ts'

export type * from './block-working.ts'
export type * from './printed.ts'
export type * from './printed-line.ts'

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
