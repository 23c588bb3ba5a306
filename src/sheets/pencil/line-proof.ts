/** A printed line that does not come out. */
export interface Failing {
  readonly number: string
  readonly printed: string
  readonly recomputed: string
}

/** What one step had to prove. */
export interface LineProof {
  readonly lines: number
  readonly failing: readonly Failing[]
}
