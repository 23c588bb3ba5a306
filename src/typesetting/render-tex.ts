import katex, { type TrustContext } from 'katex'

/** A formula as KaTeX sets it: the MathML half, for readers of the page, and the visual half. */
export interface Rendered {
  readonly mathml: string
  readonly glyphs: string
}

export interface TexFault {
  readonly says: string
}

/** Links only within the page. */
export const strictly = {
  output: 'htmlAndMathml',
  strict: 'error',
  throwOnError: true,
  trust,
} as const

/** Refuses rather than distrusts: KaTeX sets what it does not trust as red text. */
function trust(context: TrustContext): boolean {
  if (context.command === '\\href' && context.url.startsWith('#')) return true
  throw new SyntaxError(`\`${context.command}\` is not set here, but for links within the page`)
}

const opening = '<span class="katex">'
const half = '<span class="katex-html" aria-hidden="true">'
const kept = 4000
const cache = new Map<string, Rendered>()

/**
 * Sets TeX in inline style and returns both halves of KaTeX's markup. Refuses (throws) TeX that KaTeX does not
 * accept in strict mode. Answers are kept by their TeX, which is all they depend on.
 */
export function renderTex(tex: string, display = false): Rendered {
  const key = display ? `\\displaystyle{}${tex}` : tex
  const found = cache.get(key)
  if (found) return found
  const html = katex.renderToString(key, strictly)
  const cut = html.indexOf(half)
  const rendered = { mathml: html.slice(opening.length, cut), glyphs: html.slice(cut, -'</span>'.length) }
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
