import type { Root } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { Medium } from '../typesetting/medium.ts'
import type { Setting } from '../typesetting/setting.ts'
import { setSmallFigures } from '../typesetting/whole-page-figures.ts'
import { addedCounts, expectedCount, noCount } from './expected-count.ts'
import type { PencilCount } from './package-model.ts'
import { type Notes, type PlacedText, placingOf } from './place-workings.ts'
import { textParts } from './text-parts.ts'

/** The author's text and calculations, as they stand in one medium, in the parts in which it is printed. */
export interface AuthorSheets extends PlacedText {
  readonly parts: readonly string[]
  /** What the pencil proof comes to where every line closes. */
  readonly expected: PencilCount
}

/** The same, set as far as it is asked for. */
export interface AuthorText {
  readonly count: number
  /** The HTML of a part, from 0. */
  readonly part: (place: number) => string
  readonly whole: () => AuthorSheets
}

interface Kept {
  readonly of: Notes
  readonly text: AuthorText
}

/** A package is composed again when its proof is counted or its browser known; its longest part does not change with them. */
const kept = new WeakMap<Root, Map<Medium, Kept>>()

/** The author's text with its calculations put in, serialised. Answers are kept as long as the tree they came from. */
export function authorSheets(body: Root, notes: Notes, setting: Setting): AuthorText {
  const known = kept.get(body) ?? new Map<Medium, Kept>()
  const found = known.get(setting.medium)
  if (found && found.of.workings === notes.workings && found.of.notices === notes.notices) return found.text
  const text = authorText(body, notes, setting)
  kept.set(body, known.set(setting.medium, { of: notes, text }))
  return text
}

function authorText(body: Root, notes: Notes, setting: Setting): AuthorText {
  const roots = textParts(body, notes.workings)
  const placing = placingOf(body, notes, setting)
  const parts: string[] = []
  let expected = noCount
  const setTo = (place: number): void => {
    for (const root of roots.slice(parts.length, place + 1)) {
      const tree = placing.part(root)
      parts.push(toHtml(setSmallFigures(tree), { allowDangerousHtml: true }))
      expected = addedCounts(expected, expectedCount(tree))
    }
  }
  return {
    count: roots.length,
    part: place => {
      setTo(place)
      return parts[place] ?? ''
    },
    whole: () => {
      setTo(roots.length - 1)
      return { ...placing.placed, parts, expected }
    },
  }
}
