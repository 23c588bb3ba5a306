import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { evaluate, type Results } from '../evaluation/evaluate.ts'
import { makeWorkings } from '../evaluation/make-workings.ts'
import { plan } from '../evaluation/plan.ts'
import type { Workings } from '../evaluation/workings.ts'
import { modulesNamed } from '../modules/modules-named.ts'
import { readNotebookBytes } from '../notebook/read-notebook.ts'
import type { Notebook } from '../notebook/types.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { readInput } from './read-input.ts'

/** A notebook read, planned, evaluated and made ready for print. */
export interface Evaluated {
  readonly bytes: Uint8Array
  readonly notebook: Notebook
  readonly results: Results
  readonly workings: Workings
  /** All of them, in file order. */
  readonly diagnostics: readonly Diagnostic[]
  readonly status: ExitStatus
}

/** Reads a file and takes it through every stage short of the page. */
export async function evaluateFile(path: string): Promise<Evaluated> {
  return evaluateBytes(await readInput(path), path === '-' ? 'standard input' : path)
}

/** The same for the bytes of a notebook. */
export async function evaluateBytes(bytes: Uint8Array, path: string): Promise<Evaluated> {
  const notebook = readNotebookBytes(bytes, { path })
  const results = evaluate(plan(notebook, await modulesNamed(modulesOf(notebook))))
  const workings = makeWorkings(results)
  const { diagnostics } = workings
  return { bytes, notebook, results, workings, diagnostics, status: statusOf(diagnostics) }
}

const modulesOf = ({ blocks }: Notebook): string[] =>
  blocks.flatMap(block => (block.kind === 'calc' ? [block.module.text] : []))

/** Errors first, then checks that are not satisfied. */
export function statusOf(diagnostics: readonly Diagnostic[]): ExitStatus {
  if (diagnostics.some(fault => fault.severity === 'error')) return exitStatus.notebook
  return diagnostics.some(fault => fault.rule === 'check-not-satisfied') ? exitStatus.check : exitStatus.well
}
