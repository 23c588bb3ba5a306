import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import type { Read } from '../formula/types.ts'
import type { Input, Module } from '../modules/module.ts'
import type { Assumption, Statement, Written } from '../notebook/types.ts'

/** A formula as written and as read. */
export interface Reading {
  readonly written: Written
  readonly read: Read
}

/** The value of one input or field: a formula, words, or absent so that its default stands. */
export type FieldValue =
  | { readonly kind: 'formula'; readonly reading: Reading; readonly taken: boolean }
  | { readonly kind: 'words'; readonly written: Written; readonly taken: boolean }
  | { readonly kind: 'absent' }

export type InputValue =
  | FieldValue
  | { readonly kind: 'rows'; readonly rows: readonly ReadonlyMap<string, FieldValue>[] }

/** A place that refers to a name. */
export interface Use {
  readonly name: string
  readonly place: Place
}

interface Base {
  readonly key: string
  readonly block: number
  readonly uses: readonly Use[]
  readonly place: Place
}

/** What must be planned one after another. A module's node uses the nodes of all its inputs. */
export type Definition =
  | (Base & { readonly kind: 'assumption'; readonly assumption: Assumption })
  | (Base & { readonly kind: 'input'; readonly name: string; readonly input: Input; readonly value: InputValue })
  | (Base & { readonly kind: 'module'; readonly module: Module })
  | (Base & {
      readonly kind: 'statement'
      readonly statement: Statement
      readonly reading?: Reading
      readonly index: number
    })

export interface Defined {
  readonly definitions: readonly Definition[]
  readonly diagnostics: readonly Diagnostic[]
  /** Keys and calc blocks that exist but cannot be planned, with the fault that says why. */
  readonly broken: ReadonlyMap<string, Diagnostic>
  /** Blocks that were not read, or not whole: a name of theirs that nothing gives may stand in the part not read. */
  readonly lost: ReadonlyMap<string, Diagnostic>
}

/** Where definitions and faults are gathered. */
export interface Sink {
  readonly definitions: Definition[]
  readonly diagnostics: Diagnostic[]
  readonly broken: Map<string, Diagnostic>
}

/** Reports a fault and marks a key as one that cannot be planned. */
export function breakWith(sink: Sink, key: string, fault: Diagnostic): void {
  sink.diagnostics.push(fault)
  if (!sink.broken.has(key)) sink.broken.set(key, fault)
}

const reference = /^[\p{L}_][\p{L}\p{N}_]*\.[\p{L}_][\p{L}\p{N}_]*$/u

/** True where words are a reference to a short text elsewhere: `site.ground`. */
export const isReference = (text: string): boolean => reference.test(text)
