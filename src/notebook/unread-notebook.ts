import { sortDiagnostics } from '../diagnostic/sort-diagnostics.ts'
import { blankTitle } from './read-front-matter.ts'
import type { Notebook } from './types.ts'

/** Returns the notebook of a text that could not be read at all: nothing but what was said of it. */
export function unreadNotebook({ path, text, diagnostics }: Pick<Notebook, 'path' | 'text' | 'diagnostics'>): Notebook {
  return {
    path,
    text,
    title: blankTitle,
    blocks: [],
    mentions: [],
    notices: [],
    tree: { type: 'root', children: [] },
    diagnostics: sortDiagnostics(diagnostics),
  }
}
