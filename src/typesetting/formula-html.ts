import type { Element, ElementContent } from 'hast'
import { fromHtmlIsomorphic } from 'hast-util-from-html-isomorphic'
import { h } from 'hastscript'
import type { Medium } from './medium.ts'
import { raw } from './raw-node.ts'
import { type Rendered, renderTex } from './render-tex.ts'

export interface FormulaOptions {
  readonly medium: Medium
  /** What a screen reader says in print, where there is no MathML. */
  readonly spoken: string
  /** Full-size fractions and limits, as in a line of working. */
  readonly display?: boolean
  /** True: a tree that any pipeline can walk, in place of one raw node. */
  readonly parsed?: boolean
}

/**
 * A formula as a hast element. On screen: KaTeX's MathML beside its glyphs, which are hidden from readers. In print:
 * the glyphs alone, labelled as one picture with the spoken text, and with fewer paint layers. Refuses (throws) TeX
 * that KaTeX does not accept in strict mode.
 */
export function formulaHtml(tex: string, options: FormulaOptions): Element {
  return placeRendered(renderTex(tex, options.display ?? false), options)
}

/** The element for a formula that is already set. */
export function placeRendered(rendered: Rendered, options: FormulaOptions): Element {
  if (options.medium === 'print') {
    const label = options.spoken.trim() || 'formula'
    return h('span.katex', { role: 'img', ariaLabel: label }, content(forPrint(rendered.glyphs), options))
  }
  return h('span.katex', content(rendered.mathml + outOfReach(rendered.glyphs), options))
}

/** On screen the glyphs are hidden from readers, so nothing in them may take the keyboard's focus. */
function outOfReach(glyphs: string): string {
  return glyphs.replaceAll('<a href="#', '<a tabindex="-1" href="#')
}

function content(html: string, options: FormulaOptions): ElementContent[] {
  if (!options.parsed) return [raw(html)]
  return fromHtmlIsomorphic(html, { fragment: true }).children as ElementContent[]
}

/**
 * The glyphs without `aria-hidden`, without the zero-width space of each stack, and with margins in place of offsets:
 * a positioned box is a paint layer, and every printed page walks all layers of the document.
 */
export function forPrint(glyphs: string): string {
  return glyphs
    .replaceAll(' aria-hidden="true"', '')
    .replaceAll('<span class="vlist-s">\u200b</span>', '<span class="vlist-s"></span>')
    .replace(/style="top:(-?[\d.]+em);/g, (_, top: string) => `style="margin:${top} 0 ${negative(top)};`)
}

function negative(length: string): string {
  return length.startsWith('-') ? length.slice(1) : `-${length}`
}
