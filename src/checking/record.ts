import type { StepName } from './step-name.ts'
import type { StepPrint } from './vouched.ts'

/** Who did something, and when: `2026-03-04`. */
export interface Signed {
  readonly by: string
  readonly on: string
}

/** Lines behind `#` that somebody wrote into the file by hand; they stay with what they stand at. */
interface Remarked {
  readonly remarks?: readonly string[]
}

/** A checker's tick at a step. */
export interface Tick extends StepName, Signed, Remarked {
  /** The name of the block it was made in, where the block was renamed since. */
  readonly from?: string
  /** The result as it was printed. */
  readonly as: string
  readonly of: StepPrint
}

/** A checker's remark at a step; open until it is settled. */
export interface Comment extends StepName, Signed, Remarked {
  readonly says: string
  readonly settled?: Signed & { readonly says: string }
}

/** What the record holds of one block. */
export interface BlockRecord extends Remarked {
  readonly ticks: readonly Tick[]
  readonly comments: readonly Comment[]
}

/** The checking record of a notebook: ticks and comments by block and by the name of the step; remarks above all blocks stand under no name. */
export type CheckingRecord = ReadonlyMap<string, BlockRecord>

export const aboveAll = ''

export const emptyBlock: BlockRecord = { ticks: [], comments: [] }

/** Whether the text is a day that there is, as `2026-03-04`. */
export function isDay(text: string): boolean {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined
  return day !== undefined && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}
