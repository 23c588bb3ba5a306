import type { Root } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { TexTrouble } from '../typesetting/author-formula.ts'
import type { Medium } from '../typesetting/medium.ts'
import type { Setting } from '../typesetting/setting.ts'
import { setSmallFigures } from '../typesetting/whole-page-figures.ts'
import { expectedCount } from './expected-count.ts'
import type { PencilCount } from './package-model.ts'
import { type Notes, type Placed, type PlacedText, placeWorkings } from './place-workings.ts'

/** The author's text and calculations, as they stand in one medium. */
export interface AuthorSheets {
  readonly html: string
  readonly headings: readonly Placed[]
  readonly sections: PlacedText['sections']
  readonly faults: readonly TexTrouble[]
  /** What the pencil proof comes to where every line closes. */
  readonly expected: PencilCount
}

interface Kept {
  readonly of: Notes
  readonly sheets: AuthorSheets
}

/** A package is composed again when its proof is counted or its browser known; its longest part does not change with them. */
const kept = new WeakMap<Root, Map<Medium, Kept>>()

/** The author's text with its calculations put in, serialised. Answers are kept as long as the tree they came from. */
export function authorSheets(body: Root, notes: Notes, setting: Setting): AuthorSheets {
  const known = kept.get(body) ?? new Map<Medium, Kept>()
  const found = known.get(setting.medium)
  if (found && found.of.workings === notes.workings && found.of.notices === notes.notices) return found.sheets
  const { tree, ...rest } = placeWorkings(body, notes, setting)
  const html = toHtml(setSmallFigures(tree), { allowDangerousHtml: true })
  const sheets = { html, ...rest, expected: expectedCount(tree) }
  kept.set(body, known.set(setting.medium, { of: notes, sheets }))
  return sheets
}
