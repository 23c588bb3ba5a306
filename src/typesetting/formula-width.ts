import katex from 'katex'
import { strictly } from './render-tex.ts'

/** The parts of KaTeX's own boxes that carry width. */
interface Box {
  readonly classes?: readonly string[]
  readonly style?: Readonly<Record<string, string>>
  readonly children?: readonly Box[]
  readonly width?: number
  readonly italic?: number
  readonly text?: string
}

type ToBoxes = (tex: string, options: object) => Box

const sizes: readonly number[] = [0, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.44, 1.728, 2.074, 2.488]
const nullDelimiter = 0.12
const cache = new Map<string, Widths>()
const letters = new Map<string, number>()
// KaTeX exports this for its own tests and leaves it out of its types; the version is pinned
const toBoxes = (katex as unknown as { readonly __renderToHTMLTree: ToBoxes }).__renderToHTMLTree

/** In em of the formula's own size: the whole on one line, and the widest part that no line break can divide. */
export interface Widths {
  readonly whole: number
  readonly widest: number
}

/** How wide a formula is when set in line at full size, from KaTeX's own font measures. */
export function formulaWidth(tex: string): Widths {
  const found = cache.get(tex)
  if (found) return found
  const bases: Box[] = []
  collectBases(toBoxes(`\\displaystyle{}${tex}`, strictly), bases)
  const widths = bases.map(boxWidth)
  const answer = { whole: widths.reduce((a, b) => a + b, 0), widest: Math.max(0, ...widths) }
  if (cache.size >= 4000) cache.clear()
  cache.set(tex, answer)
  return answer
}

function collectBases(box: Box, into: Box[]): void {
  if (box.classes?.includes('katex-base')) into.push(box)
  else for (const child of box.children ?? []) collectBases(child, into)
}

function boxWidth(box: Box): number {
  const classes = box.classes ?? []
  const own = classes.includes('nulldelimiter') ? nullDelimiter : textWidth(box) + (box.italic ?? 0)
  const inner = (box.children ?? []).map(boxWidth)
  const stacked = classes.includes('vlist-t') || classes.includes('vlist-r') || classes.includes('vlist')
  const within = stacked ? Math.max(0, ...inner) : inner.reduce((a, b) => a + b, 0)
  return (own + within) * scale(classes) + margins(box.style ?? {})
}

/** KaTeX joins neighbouring letters into one box and leaves it the width of the first: the others are measured here. */
function textWidth({ text = '', width = 0 }: Box): number {
  const [first = '', ...rest] = text
  if (rest.length === 0) return width
  return width + (rest.reduce((sum, letter) => sum + letterWidth(letter), 0) * width) / (letterWidth(first) || width)
}

function letterWidth(letter: string): number {
  const found = letters.get(letter)
  if (found !== undefined) return found
  const measured = /[\p{L}\d.]/u.test(letter) ? firstWidth(toBoxes(`\\mathrm{${letter}}`, { strict: 'ignore' })) : 0.5
  letters.set(letter, measured)
  return measured
}

function firstWidth(box: Box): number {
  if (box.width) return box.width
  for (const child of box.children ?? []) {
    const width = firstWidth(child)
    if (width) return width
  }
  return 0
}

function scale(classes: readonly string[]): number {
  const from = classes.find(name => name.startsWith('reset-size'))
  const to = classes.find(name => /^size\d+$/.test(name))
  if (!from || !to) return 1
  return (sizes[Number(to.slice(4))] ?? 1) / (sizes[Number(from.slice(10))] ?? 1)
}

function margins(style: Readonly<Record<string, string>>): number {
  return ['marginLeft', 'marginRight', 'paddingLeft'].reduce((sum, key) => sum + em(style[key]), 0)
}

function em(length: string | undefined): number {
  return length?.endsWith('em') ? Number(length.slice(0, -2)) : 0
}
