import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { formulaHtml } from './formula-html.ts'
import type { Setting } from './setting.ts'
import { typesetWritten } from './typeset-written.ts'

/**
 * Sentences as nodes. What stands in backticks is a symbol, a formula or a unit and is set as in the working; anything else there is a
 * name as it is typed.
 */
export function prose(text: string, setting: Setting): ElementContent[] {
  return text
    .split('`')
    .map((piece, index): ElementContent => (index % 2 === 1 ? written(piece, setting) : textNode(piece)))
}

function written(text: string, setting: Setting): ElementContent {
  const set = typesetWritten(text, setting.symbols)
  const { medium, parsed } = setting
  return set ? formulaHtml(set.tex, { medium, parsed, spoken: set.spoken }) : h('code', text)
}

/** Words of our own, without anything in backticks, as a node. */
export const textNode = (value: string): ElementContent => ({ type: 'text', value })

/** Sentences where nothing can be set, as in the name of a link. */
export const plainProse = (text: string): string => text.replaceAll('`', '')

/** The first letter raised, where it begins a word and is not itself a symbol: the article before a word is one. */
export function sentenceCase(text: string): string {
  return /^(?:\p{Ll}{2}|a \p{Ll}{2})/u.test(text) ? text.charAt(0).toUpperCase() + text.slice(1) : text
}
