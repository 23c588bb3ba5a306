import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Substitution } from '../evaluation/workings.ts'
import { symbolSpoken, symbolTex } from '../formula/symbol.ts'
import { texShown } from '../formula/tex.ts'
import { typedDigits } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { fittingSize, formulaColumn } from './fit-tex.ts'
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
const symbolColumn = 4.1

/**
 * An equation: formula, then numbers and result, each beginning with its equals sign and aligned on it; on one line where
 * all fits. The parts are marked for the pencil proof: `put` and `result`.
 */
export function equationHtml(equation: Equation, setting: Setting): Element {
  const { symbol } = equation
  const before = symbol === undefined ? [] : symbolHtml(symbol, setting)
  return h('div.equation', [...before, ...linesOf(equation, setting)])
}

function linesOf({ working, result }: Equation, setting: Setting): Element[] {
  const answer = typeset(resultTex(result), spokenResult(result), setting)
  if (isResult(working, result)) return [h('div.ex', h('span.put.result', [answer]))]
  const numbers = numbersOf(working)
  const put = [h('span.put', [related('=', numbers, setting)]), ' ', h('span.result', [answer])]
  if (working.formula.names.length === 0) return [h('div.ex', put)]
  const symbols = symbolsOf(working)
  const named = h('span', [related('=', symbols, setting)])
  const whole = [symbols.tex, numbers.tex, resultTex(result)].reduce((sum, tex) => sum + formulaWidth(tex).whole, 0)
  return whole + 2 * equals < formulaColumn
    ? [h('div.ex', [named, ' ', ...put])]
    : [h('div.ex', [named]), h('div.ex', put)]
}

/** A number that is its own result is not said twice. */
function isResult({ formula: { tree } }: Substitution, result: Shown): boolean {
  const digits = tree.kind === 'number' || tree.kind === 'quantity' ? typedDigits(tree.text) : undefined
  const unit = tree.kind === 'quantity' ? tree.unit.text : ''
  return digits === result.digits && unit === result.unit.text
}

/** Room that an equals sign takes before a formula, in em. */
const equals = 1.4

/** A comparison with symbols, then with numbers, on one line where both fit; `tail` stands behind it. */
export function comparisonHtml(working: Substitution, setting: Setting, tail: readonly ElementContent[] = []): Element {
  const numbers = numbersOf(working)
  const put = h('span.put', [related('', numbers, setting)])
  if (working.formula.names.length === 0) return h('div.equation.comparison', h('div.ex', [put, ...tail]))
  const symbols = symbolsOf(working)
  const named = related('', symbols, setting)
  const fits = formulaWidth(symbols.tex).whole + formulaWidth(numbers.tex).whole + thatIs < formulaColumn
  const lines = fits
    ? [h('div.ex', [named, h('span.that-is', ' that is '), put, ...tail])]
    : [h('div.ex', [named]), h('div.ex', [put, ...tail])]
  return h('div.equation.comparison', lines)
}

/** Room for the words between the two, in em. */
const thatIs = 4

export interface Entry {
  readonly symbol: string
  /** As it stands in the table, or as the last interpolation gave it, in the table's unit. */
  readonly taken: Shown
  readonly result: Shown
}

/** A value as it was taken from a table; where it is shown in another unit, the two beside each other. */
export function entryHtml({ symbol, taken, result }: Entry, setting: Setting): Element {
  if (taken.unit.text === result.unit.text) {
    const answer = h('span.entry', [typeset(resultTex(result), spokenResult(result), setting)])
    return h('div.equation-entry', [...symbolHtml(symbol, setting), h('div.ex', [answer])])
  }
  const entry = typeset(`= ${texShown(taken)}`, spokenResult(taken), setting)
  const answer = typeset(resultTex(result), spokenResult(result), setting)
  const both = [h('span.put', h('span.entry', [entry])), ' ', h('span.result', [answer])]
  return h('div.equation', [...symbolHtml(symbol, setting), h('div.ex', both)])
}

function symbolHtml(symbol: string, setting: Setting): ElementContent[] {
  const tex = symbolTex(symbol)
  const wide = formulaWidth(tex).whole > symbolColumn
  return [h(wide ? 'div.symbol.wide' : 'div.symbol', [typeset(tex, symbolSpoken(symbol), setting)])]
}

function related(relation: '=' | '', formula: Typeset, setting: Setting): Element {
  const tex = relation && '=\\nobreak '
  const size = fittingSize(formula.tex, formulaColumn - (relation ? equals : 0))
  const set = typeset(tex + formula.tex, `${relation && 'equals '}${formula.spoken}`, setting)
  return size === 1 ? set : h('span', { style: `font-size:${size}em` }, [set])
}

function typeset(tex: string, spoken: string, setting: Setting): Element {
  return formulaHtml(tex, { medium: setting.medium, parsed: setting.parsed, spoken, display: true })
}
