import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Substitution } from '../evaluation/workings.ts'
import { fitTogether } from './fit-tex.ts'
import { setFormula } from './set-formula.ts'
import type { Setting } from './setting.ts'
import { numbersOf, symbolsOf } from './substitution-tex.ts'

/** A comparison with symbols, then with numbers, on one line where both fit; `tail` stands behind it. */
export function comparisonHtml(working: Substitution, setting: Setting, tail: readonly ElementContent[] = []): Element {
  return h('div.equation.comparison', linesOf(working, setting, tail))
}

function linesOf(working: Substitution, setting: Setting, tail: readonly ElementContent[]): Element[] {
  const numbers = numbersOf(working)
  const put = h('span.put', [setFormula(numbers, setting)])
  if (working.formula.names.length === 0) return [h('div.ex', [put, ...tail])]
  const symbols = symbolsOf(working)
  const named = setFormula(symbols, setting)
  if (!fitTogether([symbols.tex, numbers.tex], thatIs)) return [h('div.ex', [named]), h('div.ex', [put, ...tail])]
  return [h('div.ex', [named, h('span.that-is', ' that is '), put, ...tail])]
}

/** Room for the words between the two, and for what stands behind, in em. */
const thatIs = 5
