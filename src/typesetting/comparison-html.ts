import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Substitution } from '../evaluation/workings.ts'
import { isTall, room } from './fit-tex.ts'
import { setFormula } from './set-formula.ts'
import type { Setting } from './setting.ts'
import { type Laid, layOut } from './step-layout.ts'
import { numbersOf, symbolsOf } from './substitution-tex.ts'

/** Room for the words between symbols and numbers, and for a verdict behind them, in em. */
const thatIs = 2.8
const verdict = 5
/** A comparison has the column of the symbols too. */
const wider = room.symbol

/** A comparison with symbols, then with numbers, on one line where both fit; `tail` stands behind it. */
export function comparisonHtml(working: Substitution, setting: Setting, tail: readonly ElementContent[] = []): Laid {
  const numbers = numbersOf(working)
  const symbols = working.formula.names.length > 0 ? [symbolsOf(working)] : []
  const { together, across } = layOut({
    first: symbols.map(({ tex }) => tex),
    second: [numbers.tex],
    between: thatIs,
    behind: tail.length > 0 ? verdict : 0,
    taken: -wider,
  })
  const column = (across ? room.across : room.column) + wider
  const named = symbols.map(part => setFormula(part, setting, column))
  const put = [h('span.put', [setFormula(numbers, setting, column)]), ...tail]
  const tall = [...symbols, numbers].some(({ tex }) => isTall(tex)) ? ['tall'] : []
  return { html: h('div.equation.comparison', { className: tall }, lines(named, put, together)), across }
}

function lines(named: readonly Element[], put: readonly ElementContent[], together: boolean): Element[] {
  if (named.length === 0) return [h('div.ex', [...put])]
  if (together) return [h('div.ex', [...named, h('span.that-is', ' that is '), ...put])]
  return [h('div.ex', [...named]), h('div.ex', [...put])]
}
