/** What changed since a revision, in words ready to be set. */
export interface Since {
  /** `A (032a498dc1), revision A`. */
  readonly revision: string
  /** What is to be known before the rest, in sentences. */
  readonly says: readonly string[]
  readonly changes: readonly SinceChange[]
  /** Checks whose ratio or verdict is another than before, those that turned first. */
  readonly checks: readonly SinceCheck[]
  /** `32 of 60 lines differ, …`. */
  readonly recheck: string
  /** Numbers of the lines to be checked again, by block. */
  readonly lines: readonly { readonly block: string; readonly numbers: string }[]
  /** Anchors of everything whose value or text is another than before: a heavy bar stands at its left. */
  readonly changed: readonly string[]
}

export interface SinceChange {
  readonly name: string
  /** `2.6 m → 2.1 m`. */
  readonly text: string
  /** `−0.5 m, −19 %`; empty where it is no number. */
  readonly by: string
  /** Anchor of the assumption, where it is one of this package. */
  readonly to?: string
}

export interface SinceCheck {
  readonly id: string
  readonly number: string
  readonly says: string
  /** Ratios, old and new. */
  readonly old: string
  readonly now: string
  /** Set where it turned: `NOT SATISFIED`, `satisfied now`, `added`, `removed`. */
  readonly turned: string
  /** Which change moved it, and by how much where several did. */
  readonly by: string
}
