import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Substitution } from '../evaluation/workings.ts'
import { symbolSpoken, symbolTex } from '../formula/symbol.ts'
import type { Shown } from '../quantity/types.ts'
import { fittingSize } from './fit-tex.ts'
import { formulaHtml } from './formula-html.ts'
import { formulaWidth } from './formula-width.ts'
import { resultTex, spokenResult } from './result-tex.ts'
import type { Setting } from './setting.ts'
import { numbersOf, symbolsOf, type Typeset } from './substitution-tex.ts'

/** What an equation says: absent symbol, a bare expression. */
export interface Equation {
  readonly symbol?: string
  readonly working: Substitution
  readonly result: Shown
}

/** Widest symbol that stands before the equals signs, in em; a wider one takes a line of its own. */
const symbolColumn = 4.6

/**
 * An equation on its lines: formula, then numbers and result, each beginning with its equals sign and aligned on it.
 * A formula without names has one line. The parts are marked for the pencil proof: `put` and `result`.
 */
export function equationHtml(equation: Equation, setting: Setting): Element {
  const { symbol, working, result } = equation
  const lines = working.formula.names.length > 0 ? [h('div.ex', [related('=', symbolsOf(working), setting)])] : []
  const numbers = h('span.put', [related('=', numbersOf(working), setting)])
  const answer = h('span.result', [typeset(resultTex(result), spokenResult(result), setting)])
  return h('div.equation', [
    ...(symbol === undefined ? [] : symbolHtml(symbol, setting)),
    ...lines,
    h('div.ex', [numbers, ' ', answer]),
  ])
}

/** A comparison on its lines: with symbols, then with numbers. */
export function comparisonHtml(working: Substitution, setting: Setting): Element {
  const named = working.formula.names.length > 0 ? [h('div.ex', [related('', symbolsOf(working), setting)])] : []
  const put = h('span.put', [related('', numbersOf(working), setting)])
  return h('div.equation.comparison', [...named, h('div.ex', [put])])
}

/** A value as it was taken: symbol and result, for a table's own entry. */
export function entryHtml(
  { symbol, result }: Pick<Equation, 'result'> & { symbol: string },
  setting: Setting,
): Element {
  const answer = h('span.entry', [typeset(resultTex(result), spokenResult(result), setting)])
  return h('div.equation-entry', [...symbolHtml(symbol, setting), h('div.ex', [answer])])
}

function symbolHtml(symbol: string, setting: Setting): ElementContent[] {
  const tex = symbolTex(symbol)
  const wide = formulaWidth(tex).whole > symbolColumn
  return [h(wide ? 'div.symbol.wide' : 'div.symbol', [typeset(tex, symbolSpoken(symbol), setting)])]
}

function related(relation: '=' | '', formula: Typeset, setting: Setting): Element {
  const tex = relation && `${relation} `
  const size = fittingSize(formula.tex)
  const set = typeset(tex + formula.tex, `${relation && 'equals '}${formula.spoken}`, setting)
  return size === 1 ? set : h('span', { style: `font-size:${size}em` }, [set])
}

function typeset(tex: string, spoken: string, setting: Setting): Element {
  return formulaHtml(tex, { medium: setting.medium, parsed: setting.parsed, spoken, display: true })
}
