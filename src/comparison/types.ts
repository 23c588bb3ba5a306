import type { Results } from '../evaluation/evaluate.ts'
import type { Doubt, Workings } from '../evaluation/workings.ts'
import type { Notebook } from '../notebook/types.ts'
import type { Shown } from '../quantity/types.ts'
import type { Change, Restated } from './change-types.ts'

/** One of the two notebooks, evaluated and made ready for print. */
export interface Evaluation {
  readonly notebook: Notebook
  readonly results: Results
  readonly workings: Workings
}

/** A part of a move: what one change, or changes that only make sense together, do by themselves from the old notebook. */
export interface Part {
  /** Ids of changes. */
  readonly changes: readonly string[]
  /** In SI, or of a ratio. */
  readonly alone: number
}

/**
 * A move from old to new, taken apart. `alone` of every part and `together` add up to new less old: `together` is what is left over,
 * which is what the changes do to each other. Absent where a part could not be worked out by itself.
 */
export interface Attribution {
  readonly parts: readonly Part[]
  readonly together: number
}

/** Where a line or value stands in the new package (in the old one where it is gone). */
export interface Spot {
  /** `roof.M_x`, in the names of the new notebook. */
  readonly key: string
  readonly block: string
  readonly number: string
  readonly says: string
}

export type Turn = 'turned to not satisfied' | 'turned to satisfied' | 'added' | 'removed' | 'as before'

export interface CheckState {
  readonly satisfied: boolean
  /** Why it may not be leant on though it is satisfied. */
  readonly doubts: readonly Doubt[]
  readonly ratio?: { readonly value: number; readonly digits: string }
  readonly demand?: Shown
  readonly capacity?: Shown
}

/** One check of either notebook. */
export interface CheckMove extends Spot {
  readonly turn: Turn
  readonly old?: CheckState
  readonly now?: CheckState
  /** Its printed line differs. */
  readonly differs: boolean
  /** Of the ratio. */
  readonly moved?: Attribution
}

/** One value of a step that moved, that is reached now, or that is not any more. */
export interface ResultMove extends Spot {
  readonly old?: Shown
  readonly now?: Shown
  readonly si: { readonly old?: number; readonly now?: number }
  /** (new - old) / |old|; infinite from nought; absent where there is no old or no new value. */
  readonly share?: number
  readonly moved?: Attribution
}

/** A limit, second method or plausible range whose verdict is another than before. */
export interface VerdictMove {
  readonly what: 'limit' | 'second method' | 'range'
  readonly block: string
  readonly says: string
  /** True is kept, agreeing, inside. Absent where it was not judged. */
  readonly old?: boolean
  readonly now?: boolean
}

/** A printed line of the new package that is not as it was. */
export interface LineMove extends Spot {
  /** Anchor in the package; of the old one where the line is gone. */
  readonly id: string
  readonly kind: 'moved' | 'restated' | 'added' | 'removed'
  /** Ids of the changes it rests on. */
  readonly changes: readonly string[]
  /** One way from a change to the line: keys, the changed one first. */
  readonly chain: readonly string[]
}

/** What needs re-checking: every printed line of the new package is in one of the three. */
export interface Recheck {
  /** Printed lines of the new package. */
  readonly lines: number
  /** Differ in print; lines that are gone stand here too, and are not counted in `lines`. */
  readonly differ: readonly LineMove[]
  /** Rest on something that changed and print the same. */
  readonly same: readonly (Spot & { readonly id: string })[]
  /** Rest on nothing that changed, so that they cannot have moved. */
  readonly cannot: number
  /** Differ although nothing they rest on changed: a fault of the program, if ever there is one. */
  readonly unexplained: readonly string[]
}

/** Everything that `compare` tells. Plain data, for print and for a package that marks what changed since a revision. */
export interface Comparison {
  readonly changes: readonly Change[]
  readonly restated: Restated
  readonly checks: readonly CheckMove[]
  readonly verdicts: readonly VerdictMove[]
  /** Results that moved by the threshold or more, or came, or went. */
  readonly results: readonly ResultMove[]
  /** How many results moved by less than the threshold. */
  readonly below: number
  readonly threshold: number
  readonly recheck: Recheck
  /** Changes that were put in together as one part, since they could not be put in one at a time. */
  readonly grouped: readonly string[]
  readonly errors: { readonly old: number; readonly now: number }
}
