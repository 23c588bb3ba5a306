import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { FormulaLine, Substitution } from '../evaluation/workings.ts'
import { isNought } from '../formula/bare-unit.ts'
import { spokenShown } from '../formula/spoken.ts'
import { texShown } from '../formula/tex.ts'
import { typedDigits } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { one } from '../quantity/unit.ts'
import { isTall, room } from './fit-tex.ts'
import { textNode } from './prose.ts'
import { resultOf } from './result-tex.ts'
import { equalTo, setFormula, setSymbol, symbolExcess } from './set-formula.ts'
import type { Setting } from './setting.ts'
import { type Laid, type Layout, layOut } from './step-layout.ts'
import { numbersOf, originOf, symbolsOf, type Typeset } from './substitution-tex.ts'

/** What an equation says: absent symbol, numbers and result alone. */
export interface Equation {
  readonly symbol?: string
  readonly working: Substitution
  readonly result: Shown
}

interface Parts {
  readonly named: readonly Typeset[]
  readonly put: readonly Typeset[]
  readonly answer: Typeset
}

/**
 * An equation: formula, then numbers and result, each beginning with its equals sign and aligned on it; on one line where
 * all fits. The parts are marked for the pencil proof: `put` and `result`.
 */
export function equationHtml(equation: Equation, setting: Setting): Laid {
  const { symbol } = equation
  const parts = partsOf(equation, setting.row?.symbols ?? false)
  const taken = (symbol === undefined ? 0 : symbolExcess(symbol)) + (setting.row?.short ? besideNumber : 0)
  const [first, second] = [parts.named, [...parts.put, parts.answer]].map(part => part.map(({ tex }) => tex))
  const layout = layOut({ first: first ?? [], second: second ?? [], between: blank, taken })
  const column = (layout.across ? room.across : room.column) - taken
  return { html: equationBox(symbol, linesOf(parts, { ...layout, column }, setting), setting), across: layout.across }
}

/** A formula in symbols alone: what holds for every row below it. */
export function symbolsHtml({ symbol, working }: Pick<FormulaLine, 'symbol' | 'working'>, setting: Setting): Laid {
  const formula = equalTo(symbolsOf(working))
  const taken = symbolExcess(symbol)
  const { across } = layOut({ first: [formula.tex], second: [], between: blank, taken })
  const column = (across ? room.across : room.column) - taken
  const line = h(isTall(formula.tex) ? 'div.ex.tall' : 'div.ex', [setFormula(formula, setting, column)])
  return { html: equationBox(symbol, [line], setting), across }
}

/** What the number of a step takes from the room of an equation beside it, in em. */
const besideNumber = 3.4

/** A blank between two formulas, in em. */
const blank = 0.25

function equationBox(symbol: string | undefined, lines: readonly Element[], setting: Setting): Element {
  if (symbol === undefined) return h('div.equation.unnamed', [...lines])
  const far = symbolExcess(symbol) > 0 ? ['far'] : []
  return h('div.equation', { className: far }, [setSymbol(symbol, setting), ...lines])
}

function partsOf({ symbol, working, result }: Equation, symbolsOver: boolean): Parts {
  const answer = equalTo(resultOf(result))
  if (isResult(working, result)) return { named: [], put: [], answer }
  const bare = symbol === undefined || symbolsOver || working.formula.names.length === 0
  const named = bare ? [] : [equalTo(symbolsOf(working))]
  const numbers = numbersOf(working)
  if (isCopied(numbers, result)) return { named, put: [], answer: equalTo(resultOf(result, originOf(working))) }
  return { named, put: [symbol === undefined ? numbers : equalTo(numbers)], answer }
}

function linesOf(parts: Parts, layout: Layout & { readonly column: number }, setting: Setting): Element[] {
  const set = (part: Typeset): Element => setFormula(part, setting, layout.column)
  const line = (of: readonly Typeset[], content: readonly ElementContent[]): Element =>
    h(of.some(({ tex }) => isTall(tex)) ? 'div.ex.tall' : 'div.ex', [...content])
  const put =
    parts.put.length === 0
      ? [h('span.put.result', [set(parts.answer)])]
      : [h('span.put', parts.put.map(set)), textNode(' '), h('span.result', [set(parts.answer)])]
  const numbers = [...parts.put, parts.answer]
  const named = parts.named.map(part => h('span', [set(part)]))
  if (named.length === 0) return [line(numbers, put)]
  if (layout.together) return [line([...parts.named, ...numbers], [...named, textNode(' '), ...put])]
  return [line(parts.named, named), line(numbers, put)]
}

/** A number that is its own result is not said twice. */
function isResult({ formula: { tree } }: Substitution, result: Shown): boolean {
  const digits = tree.kind === 'number' || tree.kind === 'quantity' ? typedDigits(tree.text) : undefined
  if (tree.kind === 'quantity' && isNought(tree) && result.digits === '0') return true
  const unit = tree.kind === 'quantity' ? tree.unit.text : ''
  return digits === result.digits && unit === result.unit.text
}

/** A value that is handed on with the same characters is not said twice either: it links to where it was made. */
function isCopied({ spoken }: Typeset, result: Shown): boolean {
  return spoken === spokenShown(result) || spoken === spokenShown({ ...result, unit: one })
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
  const before: ElementContent[] = [setSymbol(symbol, setting)]
  if (taken.unit.text === result.unit.text) {
    return h('div.equation-entry', [...before, h('div.ex', [h('span.entry', [answer])])])
  }
  const entry = setFormula(equalTo({ tex: texShown(taken), spoken: spokenShown(taken) }), setting)
  const both = [h('span.put', h('span.entry', [entry])), ' ', h('span.result', [answer])]
  return h('div.equation', [...before, h('div.ex', both)])
}
