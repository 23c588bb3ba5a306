import type { Element, Nodes } from 'hast'
import { fromHtmlIsomorphic } from 'hast-util-from-html-isomorphic'
import { all, attribute, classed, first } from './find-elements.ts'
import type { Failing } from './line-proof.ts'
import { proveLine } from './prove-line.ts'
import { seenMarkup } from './seen-markup.ts'

/** How many printed lines were recomputed from the page's own characters, and how many closed. */
export interface PencilProof {
  readonly lines: number
  readonly closing: number
  readonly failing: readonly Failing[]
  /** Lines of a numerical method, which no pencil repeats. */
  readonly notPencil: number
}

/**
 * Reads an issued page as a checker with a pencil would: takes the characters of each printed line, works it out with an
 * arithmetic and a unit table of its own, and compares with the printed result within one unit of its last figure. Shares no
 * code with the rooms that computed the page.
 */
export function pencilProof(html: string): PencilProof {
  const page = fromHtmlIsomorphic(seenMarkup(html))
  const figures = figuresOf(page)
  const steps = all(page, element => attribute(element, 'dataLine') !== undefined)
  const solved = steps.filter(step => attribute(step, 'dataKind') === 'solve')
  const proofs = steps.filter(step => !solved.includes(step)).map(step => proveLine(step, figures))
  const lines = proofs.reduce((sum, proof) => sum + proof.lines, 0)
  const failing = proofs.flatMap(proof => proof.failing)
  return { lines, closing: lines - failing.length, failing, notPencil: solved.length }
}

/** The number of figures that the cover says results are shown to. */
function figuresOf(page: Nodes): number {
  const said = first(page, element => classed(element, 'figures-shown'))
  return Number(said ? textNumber(said) : 4) || 4
}

function textNumber(element: Element): string {
  return element.children.map(child => (child.type === 'text' ? child.value : '')).join('')
}
