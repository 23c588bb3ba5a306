import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import { symbolSpoken, symbolTex } from '../formula/symbol.ts'
import { fittingSize } from './fit-tex.ts'
import { formulaHtml } from './formula-html.ts'
import { renderTex } from './render-tex.ts'
import type { Setting } from './setting.ts'
import type { Typeset } from './substitution-tex.ts'

/** Widest symbol that stands before the equals signs, in em; a wider one takes a line of its own. */
const symbolColumn = 4.1

/** The formula behind an equals sign, from which no line break parts it. */
export function equalTo({ tex, spoken }: Typeset): Typeset {
  return { tex: `=\\nobreak ${tex}`, spoken: `equals ${spoken}` }
}

/** A formula of the working, full size unless one part of it is wider than its column. */
export function setFormula({ tex, spoken }: Typeset, setting: Setting): Element {
  const { medium, parsed } = setting
  const set = formulaHtml(tex, { medium, parsed, spoken, display: true })
  const size = fittingSize(tex)
  return size === 1 ? set : h('span', { style: `font-size:${size}em` }, [set])
}

/** The symbol before the equals signs. */
export function setSymbol(symbol: string, setting: Setting): ElementContent[] {
  const tex = symbolTex(symbol)
  const wide = renderTex(tex, true).widths.whole > symbolColumn
  return [h(wide ? 'div.symbol.wide' : 'div.symbol', [setFormula({ tex, spoken: symbolSpoken(symbol) }, setting)])]
}
