import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Substitution } from '../evaluation/workings.ts'
import { spokenShown } from '../formula/spoken.ts'
import { texShown } from '../formula/tex.ts'
import { typedDigits } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { fitTogether } from './fit-tex.ts'
import { resultOf } from './result-tex.ts'
import { equalTo, setFormula, setSymbol } from './set-formula.ts'
import type { Setting } from './setting.ts'
import { numbersOf, symbolsOf } from './substitution-tex.ts'

/** What an equation says: absent symbol, a bare expression. */
export interface Equation {
  readonly symbol?: string
  readonly working: Substitution
  readonly result: Shown
}

/**
 * An equation: formula, then numbers and result, each beginning with its equals sign and aligned on it; on one line where
 * all fits. The parts are marked for the pencil proof: `put` and `result`.
 */
export function equationHtml(equation: Equation, setting: Setting): Element {
  const { symbol } = equation
  const before = symbol === undefined ? [] : setSymbol(symbol, setting)
  return h('div.equation', [...before, ...linesOf(equation, setting)])
}

function linesOf({ working, result }: Equation, setting: Setting): Element[] {
  const answer = equalTo(resultOf(result))
  if (isResult(working, result)) return [h('div.ex', h('span.put.result', [setFormula(answer, setting)]))]
  const numbers = equalTo(numbersOf(working))
  const put = [h('span.put', [setFormula(numbers, setting)]), ' ', h('span.result', [setFormula(answer, setting)])]
  if (working.formula.names.length === 0) return [h('div.ex', put)]
  const symbols = equalTo(symbolsOf(working))
  const named = h('span', [setFormula(symbols, setting)])
  const fit = fitTogether([symbols.tex, numbers.tex, answer.tex], blank)
  return fit ? [h('div.ex', [named, ' ', ...put])] : [h('div.ex', [named]), h('div.ex', put)]
}

/** A blank between two formulas, in em. */
const blank = 0.25

/** A number that is its own result is not said twice. */
function isResult({ formula: { tree } }: Substitution, result: Shown): boolean {
  const digits = tree.kind === 'number' || tree.kind === 'quantity' ? typedDigits(tree.text) : undefined
  const unit = tree.kind === 'quantity' ? tree.unit.text : ''
  return digits === result.digits && unit === result.unit.text
}

export interface Entry {
  readonly symbol: string
  /** As it stands in the table, or as the last interpolation gave it, in the table's unit. */
  readonly taken: Shown
  readonly result: Shown
}

/** A value as it was taken from a table; where it is shown in another unit, the two beside each other. */
export function entryHtml({ symbol, taken, result }: Entry, setting: Setting): Element {
  const answer = setFormula(equalTo(resultOf(result)), setting)
  const before = setSymbol(symbol, setting)
  if (taken.unit.text === result.unit.text) {
    return h('div.equation-entry', [...before, h('div.ex', [h('span.entry', [answer])])])
  }
  const entry = setFormula(equalTo({ tex: texShown(taken), spoken: spokenShown(taken) }), setting)
  const both = [h('span.put', h('span.entry', [entry])), ' ', h('span.result', [answer])]
  return h('div.equation', [...before, h('div.ex', both)])
}
