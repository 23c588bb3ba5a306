import type { ElementContent } from 'hast'
import { h } from 'hastscript'

/** Our own sentences as nodes: what stands in backticks is a name as it is typed. */
export function prose(text: string): ElementContent[] {
  return text
    .split('`')
    .map((piece, index): ElementContent => (index % 2 === 1 ? h('code', piece) : { type: 'text', value: piece }))
}

/** The first letter raised, where it begins a word and is not itself a symbol. */
export function sentenceCase(text: string): string {
  return /^\p{Ll}{2}/u.test(text) ? text.charAt(0).toUpperCase() + text.slice(1) : text
}
