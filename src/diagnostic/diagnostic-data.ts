import type { Diagnostic } from './diagnostic.ts'

/** A diagnostic as JSON data: the object itself, with the path of its file first. */
export interface DiagnosticData extends Diagnostic {
  readonly path: string
}

/** Returns the JSON form of a diagnostic. */
export const diagnosticData = (diagnostic: Diagnostic, path: string): DiagnosticData => ({ path, ...diagnostic })
