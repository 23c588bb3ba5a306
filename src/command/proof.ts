import type { DataDifference } from './data-differences.ts'
import type { TextDifference } from './page-differences.ts'

/** What was found out about a package. */
export interface Proof {
  readonly package: string
  readonly notebook: { readonly name: string; readonly sha256: string }
  /** The tool that issued it, and this one. */
  readonly issuedBy: string
  readonly provedBy: string
  /** `identical` to the byte; `same` results and text; `differs`. */
  readonly verdict: 'identical' | 'same' | 'differs'
  readonly results: readonly DataDifference[]
  readonly text: readonly TextDifference[]
  /** True where bytes differ though tool, browser and every character are the same: something that is no text was changed. */
  readonly unseen: boolean
}
