/** An input of a published case as an author would write it: an expression, a word, or rows. */
export type CaseInput = string | readonly Readonly<Record<string, string>>[]

/** A published case: the tests run it and the package's record prints it, answer beside ours. */
export interface PublishedCase {
  readonly id: string
  /** The source as a reader would look it up: author, title, edition, table, page. */
  readonly source: string
  readonly status: 'looked up' | 'memory' | 'computed'
  readonly says: string
  readonly inputs: Readonly<Record<string, CaseInput>>
  /** Output name to the answer as printed: `'57.5 kN/m'`. */
  readonly answers: Readonly<Record<string, string>>
  /** Absent: half a unit in the answer's last printed digit. `{ relative: 0.005 }`, or `{ units: 1 }` in the last printed digit. */
  readonly tolerance?: { readonly relative: number } | { readonly units: number }
}
