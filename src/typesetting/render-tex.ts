import { boxWidths, type Widths } from './box-width.ts'
import { katexTree } from './katex-tree.ts'

/** A formula as KaTeX sets it: the MathML half, for readers of the page, the visual half, and how wide it is. */
export interface Rendered {
  readonly mathml: string
  readonly glyphs: string
  readonly widths: Widths
}

export interface TexFault {
  readonly says: string
}

const opening = '<span class="katex">'
const half = '<span class="katex-html" aria-hidden="true">'
const kept = 8000
const cache = new Map<string, Rendered>()

/**
 * Sets TeX in line and returns both halves of KaTeX's markup. Refuses (throws) TeX that KaTeX does not
 * accept in strict mode. Answers are kept by their TeX, which is all they depend on.
 */
export function renderTex(tex: string, display = false): Rendered {
  const key = display ? `\\displaystyle{}${tex}` : tex
  const found = cache.get(key)
  if (found) return found
  const tree = katexTree(key)
  const html = tree.toMarkup()
  const cut = html.indexOf(half)
  const halves = { mathml: html.slice(opening.length, cut), glyphs: html.slice(cut, -'</span>'.length) }
  const rendered = { ...halves, widths: boxWidths(tree) }
  if (cache.size >= kept) cache.clear()
  cache.set(key, rendered)
  return rendered
}

/** The same, with KaTeX's complaint in place of a throw: for TeX that an author wrote. */
export function tryTex(tex: string, display = false): Rendered | TexFault {
  try {
    return renderTex(tex, display)
  } catch (error) {
    return { says: String((error as Error).message).replace(/^KaTeX parse error:\s*/, '') }
  }
}
