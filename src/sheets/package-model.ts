import type { Root } from 'hast'
import type { CheckingState } from '../checking/checking-state.ts'
import type { Passport } from '../evaluation/passport.ts'
import type { Workings } from '../evaluation/workings.ts'
import type { Notebook } from '../notebook/types.ts'
import type { ShownMargin } from '../study/shown-margins.ts'
import type { Attachment } from './attachment.ts'
import type { RangeChart } from './ranges-sheet.ts'
import type { Since } from './since.ts'

/** What made the package. No clock time unless asked for. */
export interface PackageRecord {
  readonly tool: string
  readonly version: string
  /** SHA-256 of the notebook's bytes, hexadecimal. */
  readonly sha256: string
  readonly command: string
  readonly modules: readonly {
    readonly id: string
    readonly version: string
    readonly title: string
    readonly code?: string
  }[]
  readonly browser?: { readonly name: string; readonly version: string; readonly pinned: boolean }
  readonly made?: string
}

/** How far an assumption can move before a check turns, by the assumption's anchor. */
export type Margins = ReadonlyMap<string, ShownMargin>

/** Printed lines that a pencil repeats, how many of them close, and lines of a numerical method, which no pencil repeats. */
export interface PencilCount {
  readonly lines: number
  readonly closing: number
  readonly notPencil: number
}

/** What a package is composed from, save what is long in the finding and stands on sheets of its own. */
export interface EarlyModel {
  readonly notebook: Notebook
  readonly workings: Workings
  /** The author's text as hast, with placeholders for blocks, mentions and notices. */
  readonly body: Root
  readonly record: PackageRecord
  /** Charts of what the ranges do, where the title block asks for them. */
  readonly ranges?: readonly RangeChart[]
  /** What the pencil proof counted; absent before it was made. */
  readonly proof?: PencilCount
  /** The checking record held against this package; absent where there is none. */
  readonly checking?: CheckingState
  /** What changed since an older revision, where the package is set against one. */
  readonly since?: Since
  readonly draft: boolean
  /** What the package was made from, and its results as data; on the screen to be taken out, in the PDF as its attachments. */
  readonly attachments?: readonly Attachment[]
  readonly paper: 'A4' | 'letter'
  readonly date: string
}

/** The margins, absent for a notebook with errors, and what stands behind the modules. */
export interface LateModel {
  readonly margins?: Margins
  readonly passports: readonly Passport[]
}

/** Everything a package is composed from. */
export type PackageModel = EarlyModel & LateModel
