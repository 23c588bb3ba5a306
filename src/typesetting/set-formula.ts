import type { Element } from 'hast'
import { h } from 'hastscript'
import { symbolSpoken, symbolTex } from '../formula/symbol.ts'
import { type Column, fittingSize, room } from './fit-tex.ts'
import { formulaHtml } from './formula-html.ts'
import { renderTex } from './render-tex.ts'
import type { Setting } from './setting.ts'
import type { Typeset } from './substitution-tex.ts'

/** The formula behind an equals sign, from which no line break parts it. */
export function equalTo({ tex, spoken }: Typeset): Typeset {
  return { tex: `=\\nobreak ${tex}`, spoken: `equals ${spoken}` }
}

/** A formula of the working, full size unless one part of it is wider than its column. */
export function setFormula({ tex, spoken }: Typeset, setting: Setting, column?: Column): Element {
  const { medium, parsed } = setting
  const set = formulaHtml(tex, { medium, parsed, spoken, display: true })
  const size = fittingSize(tex, column)
  return size === 1 ? set : h('span', { style: `font-size:${size}em` }, [set])
}

/** The symbol before the equals signs. */
export function setSymbol(symbol: string, setting: Setting): Element {
  return h('div.symbol', [setFormula({ tex: symbolTex(symbol), spoken: symbolSpoken(symbol) }, setting)])
}

/** By how much a symbol is wider than the column before the equals signs, in em. */
export function symbolExcess(symbol: string): number {
  return Math.max(0, renderTex(symbolTex(symbol), true).widths.whole - room.symbol)
}
