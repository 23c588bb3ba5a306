import type { Input } from './input.ts'
import type { LedgerKey } from './ledger.ts'
import type { Caution, Limit } from './limit.ts'
import type { CaseInput, PublishedCase } from './published-case.ts'
import type { Second } from './second.ts'
import type { Drawing, SketchView } from './sketch.ts'
import type { Step } from './step.ts'

export type { Condition } from './condition.ts'
export type * from './input.ts'
export type { Caution, Limit } from './limit.ts'
export type { CaseInput, PublishedCase } from './published-case.ts'
export type { Comparison, Second } from './second.ts'
export type * from './step.ts'

/**
 * A schedule to be handed on: a table of its own in the package, and as CSV. Either a row of it for each row of a list, with fields and
 * steps of the row as columns; or a line of it for each of some values.
 */
export type Schedule =
  | { readonly title: string; readonly list: string; readonly columns: readonly string[] }
  | { readonly title: string; readonly lines: readonly string[] }

/** A line of the ledger that a module answers, always or with these words of a choice. */
export type Covered = LedgerKey | { readonly line: LedgerKey; readonly choice: string; readonly is: readonly string[] }

/** A typed calculation: one published method, as a reviewer who knows the trade can read it. */
export interface Module {
  readonly id: string
  readonly version: string
  readonly title: string
  /** The question it answers. */
  readonly asks: string
  /** The code it belongs to, where it belongs to one: `IS 456:2000`. */
  readonly code?: string
  readonly inputs: Readonly<Record<string, Input>>
  readonly steps: readonly Step[]
  /** The names an author mostly wants, in order. */
  readonly results: readonly string[]
  /** The limit states and services of the ledger that it answers; some only with these words of a choice. */
  readonly covers?: readonly Covered[]
  /** Inputs and results that go to the drawings, in order. */
  readonly drawing?: readonly string[]
  readonly schedule?: Schedule
  readonly limits: readonly Limit[]
  readonly cautions: readonly Caution[]
  readonly second?: Second
  readonly sketch?: (view: SketchView) => Drawing
  readonly published: readonly PublishedCase[]
  /** The inputs of a block to paste, one that evaluates. */
  readonly example: Readonly<Record<string, CaseInput>>
}

/** Returns its argument, checked against the type of a module. */
export function defineModule(module: Module): Module {
  return module
}
