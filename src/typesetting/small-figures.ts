import type { ElementContent } from 'hast'
import { h } from 'hastscript'

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺'
const lowered = '₀₁₂₃₄₅₆₇₈₉'
const plainRaised = '0123456789−+'

export interface Piece {
  readonly text: string
  readonly level: 'line' | 'sup' | 'sub'
}

/**
 * Text parted at its small figures, `10⁻⁶`, `inH₂O`, which the embedded face has not got: they are set as raised or lowered
 * ordinary ones. The narrow space of thousands becomes the thin one that the face has.
 */
export function pieces(text: string): readonly Piece[] {
  const found = text.replaceAll('\u202f', '\u2009').match(/[⁰¹²³⁴-⁹⁻⁺]+|[₀-₉]+|[^⁰¹²³⁴-⁹⁻⁺₀-₉]+/gu) ?? []
  return found.map(part => {
    if (raised.includes(part.charAt(0))) return { text: swapped(part, raised, plainRaised), level: 'sup' }
    if (lowered.includes(part.charAt(0))) return { text: swapped(part, lowered, '0123456789'), level: 'sub' }
    return { text: part, level: 'line' }
  })
}

/** The same as nodes of a page. */
export function textNodes(text: string): ElementContent[] {
  return pieces(text).map(piece =>
    piece.level === 'line' ? { type: 'text', value: piece.text } : h(piece.level, piece.text),
  )
}

function swapped(part: string, from: string, to: string): string {
  return [...part].map(letter => to.charAt(from.indexOf(letter))).join('')
}
