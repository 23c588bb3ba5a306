import type { Element, Nodes } from 'hast'
import { fromHtmlIsomorphic } from 'hast-util-from-html-isomorphic'
import { symbolTex } from '../formula/symbol.ts'
import { renderTex } from './render-tex.ts'

/** A stretch of a symbol in one style: letters italic, words and digits upright, subscripts below the line. */
export interface Run {
  readonly text: string
  readonly style: 'italic' | 'upright'
  readonly level: 'line' | 'sub' | 'sup'
}

/**
 * A symbol as runs of plain text, for lettering where KaTeX cannot stand (a drawing). Taken from the MathML of the
 * same TeX that sets it elsewhere, so that it has one reading.
 */
export function symbolRuns(symbol: string): readonly Run[] {
  const found = known.get(symbol)
  if (found) return found
  const runs = readRuns(symbol)
  if (known.size >= kept) known.clear()
  known.set(symbol, runs)
  return runs
}

const kept = 1000
const known = new Map<string, readonly Run[]>()

function readRuns(symbol: string): readonly Run[] {
  const tree = fromHtmlIsomorphic(renderTex(symbolTex(symbol)).mathml, { fragment: true })
  const runs: Run[] = []
  for (const child of tree.children) walk(child, 'line', runs)
  return runs
}

function walk(node: Nodes, level: Run['level'], into: Run[]): void {
  if (node.type !== 'element' || node.tagName === 'annotation') return
  const parts = node.children.filter(child => child.type === 'element')
  if (parts.length === 0) {
    add({ text: plain(node), style: italic(node) ? 'italic' : 'upright', level }, into)
  } else if (node.tagName === 'msub' || node.tagName === 'msubsup') {
    const [base, sub, sup] = parts
    if (base) walk(base, level, into)
    if (sup) walk(sup, level, into)
    if (sub) walk(sub, 'sub', into)
  } else {
    for (const part of parts) walk(part, level, into)
  }
}

function add(run: Run, into: Run[]): void {
  const last = into.at(-1)
  if (last && last.style === run.style && last.level === run.level) {
    into[into.length - 1] = { ...last, text: last.text + run.text }
  } else if (run.text) into.push(run)
}

function italic(node: Element): boolean {
  return node.tagName === 'mi' && node.properties.mathVariant !== 'normal' && node.properties.mathvariant !== 'normal'
}

function plain(node: Element): string {
  return node.children.map(child => (child.type === 'text' ? child.value : '')).join('')
}
