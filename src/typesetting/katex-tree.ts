import katex, { type TrustContext } from 'katex'

/** KaTeX's own boxes: the parts that carry width, and the markup they write. */
export interface Box {
  readonly classes?: readonly string[]
  readonly style?: Readonly<Record<string, string>>
  readonly children?: readonly Box[]
  readonly width?: number
  readonly italic?: number
  readonly text?: string
  toMarkup(): string
}

/** Strict, and links only within the page. */
const strictly = { output: 'htmlAndMathml', strict: 'error', throwOnError: true, trust } as const

/** Refuses rather than distrusts: KaTeX sets what it does not trust as red text. */
function trust(context: TrustContext): boolean {
  if (context.command === '\\href' && context.url.startsWith('#')) return true
  throw new SyntaxError(`\`${context.command}\` is not set here, but for links within the page`)
}

// KaTeX exports this for its own tests and leaves it out of its types; the version is pinned, and a test holds its
// markup against that of `renderToString`. It gives markup and widths from one setting.
const { __renderToDomTree } = katex as unknown as {
  readonly __renderToDomTree: (tex: string, options: object) => Box
}

/** The boxes of a formula. Refuses (throws) TeX that KaTeX does not accept in strict mode. */
export function katexTree(tex: string): Box {
  return __renderToDomTree(tex, strictly)
}
