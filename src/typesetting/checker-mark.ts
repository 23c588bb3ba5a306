/** What checkers have left at a step, by its anchor. */
export interface CheckerMark {
  /** Of those whose ticks stand. */
  readonly initials: readonly string[]
  /** Of those whose ticks fell and who have not ticked again. */
  readonly fallen: readonly string[]
  readonly comments: readonly CheckerComment[]
}

export interface CheckerComment {
  /** `C3`. */
  readonly number: string
  readonly by: string
  readonly on: string
  readonly says: string
  readonly settled?: { readonly by: string; readonly on: string; readonly says: string }
}
