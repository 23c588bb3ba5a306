import type { Diagnostic, Note, Place } from '../diagnostic/diagnostic.ts'
import type { Rule } from '../diagnostic/rules.ts'
import type { Lines } from './lines.ts'

/** What every stage of the reader needs: the author's text, and where to say what is wrong with it. */
export interface Reading {
  readonly lines: Lines
  readonly report: (diagnostic: Diagnostic) => void
}

interface Sentence {
  readonly says: string
  readonly help?: string
  readonly notes?: readonly Note[]
}

/** Reports an error at a place. */
export function error(reading: Reading, rule: Rule, at: { readonly place: Place } & Sentence): void {
  reading.report({ rule, severity: 'error', ...at })
}
