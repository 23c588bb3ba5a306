import type { Line } from '../evaluation/workings.ts'
import type { Fallen } from './match-entries.ts'
import type { Comment, Signed, Tick } from './record.ts'
import type { StepName } from './step-name.ts'
import type { StepPrint } from './vouched.ts'

/** A step of the package, as the record knows it. */
export interface CheckedStep {
  readonly block: string
  /** By which it is called within its block. */
  readonly key: string
  /** As the record names it. */
  readonly name: StepName
  readonly line: Line
  /** Its result as printed now. */
  readonly now: string
  readonly print: StepPrint
  /** Ticks that stand: what they vouch for is printed as it was. */
  readonly standing: readonly Tick[]
  readonly fallen: readonly Fallen[]
  readonly comments: readonly Comment[]
}

/** What a new tick at the step vouches for, as printed now. */
export const tickOf = ({ name, now, print }: CheckedStep, { by, on }: Signed): Tick => ({
  ...name,
  by,
  on,
  as: now,
  of: print,
})
