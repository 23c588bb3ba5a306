import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { formatDiagnostic } from '../diagnostic/format-diagnostic.ts'
import type { Notebook } from '../notebook/types.ts'
import { countOf } from './count-of.ts'
import type { Terminal } from './terminal.ts'

/** Prints every diagnostic with its code frame, then a count. */
export function sayDiagnostics(terminal: Terminal, notebook: Notebook, diagnostics: readonly Diagnostic[]): void {
  const { path, text } = notebook
  const { colour } = terminal
  for (const diagnostic of diagnostics)
    terminal.say(`${formatDiagnostic(diagnostic, { path, text, ...(colour ? { colour } : {}) })}\n`)
  if (diagnostics.length === 0) return
  const { errors, warnings } = countOf(diagnostics)
  terminal.say(`${errors}, ${warnings}`)
}
