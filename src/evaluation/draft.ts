import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { placeWithin } from '../diagnostic/place-within.ts'
import type { Fault, Formula } from '../formula/types.ts'
import type { Notebook, Written } from '../notebook/types.ts'
import type { System } from '../quantity/types.ts'
import type { Entity, Named, Op, PlannedBlock, PlannedInput, PlannedLine, PlannedRange } from './plan-types.ts'

/** A plan while it is being made. */
export interface Draft {
  readonly notebook: Notebook
  readonly system: System
  readonly start: number[]
  readonly ops: Op[]
  readonly blocks: (PlannedBlock | undefined)[]
  /** Lines of work blocks by the index of the block, each with its place in the author's order. */
  readonly statements: Map<number, { readonly index: number; readonly line: PlannedLine }[]>
  readonly names: Map<string, Named>
  readonly broken: Map<string, Diagnostic>
  /** Blocks of which a part was not read: what nothing gives may stand there. */
  readonly lost: ReadonlyMap<string, Diagnostic>
  readonly ranges: PlannedRange[]
  /** Every line in the order of evaluation. */
  readonly trail: PlannedLine[]
  readonly diagnostics: Diagnostic[]
  /** How many values each fault has stopped. */
  readonly stopped: Map<Diagnostic, number>
  /** Names that nothing has: the nearest is found when all names are known. */
  readonly unknown: Map<Diagnostic, Unknown>
  /** Inputs of calc blocks by key: `roof.short_span`. */
  readonly inputs: Map<string, PlannedInput>
  /** Stated numbers that a choice was taken from, each with the first input that took it. */
  readonly chosen: Map<Entity, string>
  /** Formulas of modules, read once. */
  readonly formulas: Map<string, Formula>
}

/** A name that nothing has. */
interface Unknown {
  readonly name: string
  /** The block it was looked for in. */
  readonly block: string
  /** What else may have been meant. */
  readonly help?: string
}

/** A plan with nothing in it yet. */
export const newDraft = (notebook: Notebook, lost: ReadonlyMap<string, Diagnostic>): Draft => ({
  notebook,
  system: notebook.title.units,
  start: [],
  ops: [],
  blocks: notebook.blocks.map(() => undefined),
  statements: new Map(),
  names: new Map(),
  broken: new Map(),
  lost,
  ranges: [],
  trail: [],
  diagnostics: [],
  stopped: new Map(),
  unknown: new Map(),
  inputs: new Map(),
  chosen: new Map(),
  formulas: new Map(),
})

/** A new slot; NaN stands for "not evaluated". */
export function newSlot(draft: Draft, value = Number.NaN): number {
  return draft.start.push(value) - 1
}

/** A fault in a formula as a message at the author's characters. */
export function faultAt(fault: Fault, written: Written): Diagnostic {
  const { rule, says, help, span } = fault
  const place: Place = written.exact === false ? written.place : placeWithin(written.place, span)
  return { rule, severity: 'error', place, says, ...(help ? { help } : {}) }
}

/** Reports a fault and marks a key as impossible to plan. */
export function breakKey(draft: Draft, key: string, fault: Diagnostic): void {
  draft.diagnostics.push(fault)
  draft.broken.set(key, fault)
}

/** Marks a key as stopped by an earlier fault, without a message of its own. */
export function stopKey(draft: Draft, key: string, cause: Diagnostic): void {
  draft.broken.set(key, cause)
  draft.stopped.set(cause, (draft.stopped.get(cause) ?? 0) + 1)
}
