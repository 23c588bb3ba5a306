import type { Root } from 'mdast'
import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import type { System } from '../quantity/types.ts'

/** Text the author wrote, with where it stands. `exact` is false where columns inside it cannot be told (folded or escaped scalars). */
export interface Written {
  readonly text: string
  readonly place: Place
  readonly exact?: boolean
}

/** The value of a key in a block, as written. */
export type Entry =
  | { readonly kind: 'scalar'; readonly written: Written }
  | { readonly kind: 'list'; readonly items: readonly Entry[]; readonly place: Place }
  | { readonly kind: 'map'; readonly entries: readonly Keyed[]; readonly place: Place }

export interface Keyed {
  readonly key: Written
  readonly value: Entry
}

export interface Revision {
  readonly mark: string
  readonly date: string
  readonly note: string
}

/** A line of the design basis: what is asked of the structure, the value that states it, and the checks that show it is met. */
export interface Requirement {
  readonly what: Written
  readonly value?: Written
  readonly shownBy: readonly Written[]
}

/** What the author says of a line of the coverage ledger: blocks of their own answer it, or why it does not apply. */
export interface CoverageEntry {
  /** A line of the ledger, or a whole part of the job. */
  readonly key: Written
  readonly by: readonly Written[]
  readonly reason: string
}

export type CheckLevel = 'self' | 'other person' | 'other organisation'

/** The title block. Every key but `title` is optional; absent text is `''`. */
export interface TitleBlock {
  readonly title: string
  readonly project: string
  readonly number: string
  readonly revision: string
  readonly purpose: string
  readonly prepared: string
  readonly checked: string
  readonly approved: string
  readonly checkLevel?: CheckLevel
  readonly date: string
  readonly language: string
  readonly units: System
  /** Significant figures of printed results; 4 unless the author says. */
  readonly figures: number
  readonly paper: 'A4' | 'letter'
  readonly codes: readonly string[]
  /** Values and checks whose chart over the assumptions' ranges the package shows. */
  readonly ranges: readonly string[]
  readonly designBasis: readonly Requirement[]
  readonly coverage: readonly CoverageEntry[]
  readonly revisions: readonly Revision[]
  /** The author's own references: key to full entry. */
  readonly references: ReadonlyMap<string, string>
}

export interface Assumption {
  readonly name: Written
  readonly value: Written
  readonly basis?: Written
  readonly range?: { readonly from: Written; readonly to: Written }
  readonly status: 'confirmed' | 'hold'
  readonly closes?: Written
  readonly measured?: Written
  readonly evidence?: Written
  readonly symbol?: Written
}

interface BlockBase {
  readonly name: Written
  /** The whole fence, first line. */
  readonly place: Place
  /** Offset behind the whole fence. */
  readonly end: number
  /** True where a part of the block could not be read and was reported: what it seems to lack may stand in that part. */
  readonly unread?: true
}

export interface AssumeBlock extends BlockBase {
  readonly kind: 'assume'
  readonly assumptions: readonly Assumption[]
}

export interface CalcBlock extends BlockBase {
  readonly kind: 'calc'
  readonly module: Written
  readonly inputs: readonly Keyed[]
}

/** One line of a work block. A step has a name; a check has none; a table has points. */
export type Statement =
  | { readonly kind: 'step'; readonly name: Written; readonly formula: Written; readonly remark?: Written }
  | { readonly kind: 'check'; readonly formula: Written; readonly remark?: Written }
  | {
      readonly kind: 'table'
      readonly name: Written
      readonly points: readonly (readonly [Written, Written])[]
      readonly remark?: Written
    }

export interface WorkBlock extends BlockBase {
  readonly kind: 'work'
  readonly statements: readonly Statement[]
}

export type Block = AssumeBlock | CalcBlock | WorkBlock

/** A reference in prose: `:value[roof.M]{unit="kip*ft/ft" figures=3}`, `:see[roof]`, `:cite[key]`. */
export type Mention =
  | {
      readonly kind: 'value'
      readonly name: Written
      readonly unit?: Written
      readonly figures?: number
      readonly place: Place
    }
  | { readonly kind: 'see'; readonly name: Written; readonly place: Place }
  | { readonly kind: 'cite'; readonly name: Written; readonly place: Place }

/** A boxed caution or hold in the author's text; `text` is its plain text. */
export interface Notice {
  readonly kind: 'caution' | 'hold'
  readonly text: string
  readonly place: Place
}

/**
 * A notebook as read: no number is known yet. `tree` is the author's Markdown, in which the nodes of ours carry
 * `data.undercroft` (see `TreeMark`), so that the working can be put in their place.
 */
export interface Notebook {
  readonly path: string
  readonly text: string
  readonly title: TitleBlock
  /** In the author's order. */
  readonly blocks: readonly Block[]
  readonly mentions: readonly Mention[]
  readonly notices: readonly Notice[]
  readonly tree: Root
  readonly diagnostics: readonly Diagnostic[]
}

/** What a node of the tree stands for: set as `node.data.undercroft` on code fences, text directives and containers of ours. */
export type TreeMark =
  | { readonly kind: 'block'; readonly index: number }
  | { readonly kind: 'mention'; readonly index: number }
  | { readonly kind: 'notice'; readonly index: number }
