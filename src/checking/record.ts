import type { StepPrint } from './step-print.ts'

/** Who did something, and when: `2026-03-04`. */
export interface Signed {
  readonly by: string
  readonly on: string
}

/** A checker's tick at a step. */
export interface Tick extends Signed {
  readonly step: string
  /** The result as it was printed. */
  readonly as: string
  readonly of: StepPrint
}

/** A checker's remark at a step; open until it is settled. */
export interface Comment extends Signed {
  readonly step: string
  readonly says: string
  readonly settled?: Signed & { readonly says: string }
}

/** What the record holds of one block. */
export interface BlockRecord {
  readonly ticks: readonly Tick[]
  readonly comments: readonly Comment[]
}

/** The checking record of a notebook: ticks and comments by block and by the key of the step. */
export type CheckingRecord = ReadonlyMap<string, BlockRecord>

export const emptyBlock: BlockRecord = { ticks: [], comments: [] }
