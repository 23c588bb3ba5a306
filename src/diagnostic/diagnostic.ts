import type { Rule } from './rules.ts'

/** A stretch of one line of the author's file. Lines and columns count from 1; offsets count UTF-16 units from 0. */
export interface Place {
  readonly line: number
  readonly column: number
  readonly offset: number
  /** Offset just past the last character; equal to `offset` for a point. */
  readonly end: number
}

/** A further sentence, with its own place where it has one. */
export interface Note {
  readonly says: string
  readonly place?: Place
}

/** One thing that is wrong or doubtful in the author's notebook. */
export interface Diagnostic {
  readonly rule: Rule
  readonly severity: 'error' | 'warning'
  readonly place: Place
  /** One sentence in the author's terms: what is wrong. Sentence case, no final stop. */
  readonly says: string
  /** One sentence: what would be right. */
  readonly help?: string
  readonly notes?: readonly Note[]
  /** How many values could not be evaluated because of this one. */
  readonly stops?: number
}
