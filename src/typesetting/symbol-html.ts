import type { Element } from 'hast'
import { symbolSpoken, symbolTex } from '../formula/symbol.ts'
import { formulaHtml } from './formula-html.ts'
import type { Setting } from './setting.ts'

/** A symbol as it stands in the working. */
export function symbolHtml(symbol: string, setting: Setting): Element {
  return formulaHtml(symbolTex(symbol), {
    medium: setting.medium,
    parsed: setting.parsed,
    spoken: symbolSpoken(symbol),
  })
}
