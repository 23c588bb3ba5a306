import { type Box, katexTree } from './katex-tree.ts'

/** In em of the formula's own size: the whole on one line, and the widest part that no line break can divide. */
export interface Widths {
  readonly whole: number
  readonly widest: number
}

const sizes: readonly number[] = [0, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.44, 1.728, 2.074, 2.488]
const nullDelimiter = 0.12
/** The index of a root stands over its sign, by KaTeX's style sheet. */
const rootHangs = 0.2778 - 0.5556
const letters = new Map<string, number>()

/** How wide a formula is when set in line, from KaTeX's own font measures. */
export function boxWidths(tree: Box): Widths {
  const widths = bases(tree).map(boxWidth)
  return { whole: widths.reduce((a, b) => a + b, 0), widest: Math.max(0, ...widths) }
}

/** The boxes between which a line can break. */
function bases(box: Box): readonly Box[] {
  if (box.classes?.includes('katex-base')) return [box]
  return (box.children ?? []).flatMap(bases)
}

function boxWidth(box: Box): number {
  const classes = box.classes ?? []
  const own = classes.includes('nulldelimiter') ? nullDelimiter : textWidth(box) + (box.italic ?? 0)
  const inner = (box.children ?? []).map(boxWidth)
  const stacked = classes.includes('vlist-t') || classes.includes('vlist-r') || classes.includes('vlist')
  const within = stacked ? Math.max(0, ...inner) : inner.reduce((a, b) => a + b, 0)
  const hung = classes.includes('katex-root') ? rootHangs : 0
  return (own + within) * scale(classes) + margins(box.style ?? {}) + hung
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
  const measured = /[A-Za-z\d.]/.test(letter) ? firstWidth(katexTree(`\\mathrm{${letter}}`)) : 0.5
  letters.set(letter, measured)
  return measured
}

function firstWidth(box: Box): number {
  if (box.width) return box.width
  return (box.children ?? []).reduce((found, child) => found || firstWidth(child), 0)
}

function scale(classes: readonly string[]): number {
  const from = classes.find(name => name.startsWith('reset-size'))
  const to = classes.find(name => /^size\d+$/.test(name))
  if (!from || !to) return 1
  return (sizes[Number(to.slice(4))] ?? 1) / (sizes[Number(from.slice(10))] ?? 1)
}

function margins(style: Readonly<Record<string, string>>): number {
  return ['marginLeft', 'marginRight', 'paddingLeft', 'width'].reduce((sum, key) => sum + em(style[key]), 0)
}

function em(length: string | undefined): number {
  return length?.endsWith('em') ? Number(length.slice(0, -2)) : 0
}
