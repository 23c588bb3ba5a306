import type { Element } from 'hast'
import { h } from 'hastscript'
import { placeRendered } from './formula-html.ts'
import { tryTex } from './render-tex.ts'
import type { Setting } from './setting.ts'

/** A formula in the author's text that could not be set. */
export interface TexTrouble {
  readonly tex: string
  readonly says: string
}

export interface AuthorFormulaOptions {
  readonly setting: Setting
  /** Told of a formula that could not be set. */
  readonly faults: TexTrouble[]
  readonly display: boolean
}

/** TeX of the author's, set; where it cannot be, shown as typed in a frame, and reported. */
export function authorFormula(tex: string, { setting, faults, display }: AuthorFormulaOptions): Element {
  const rendered = tryTex(tex.trim(), display)
  if ('says' in rendered) {
    faults.push({ tex, says: rendered.says })
    return h('code.bad-tex', tex)
  }
  const set = placeRendered(rendered, {
    medium: setting.medium,
    parsed: setting.parsed,
    spoken: `formula in TeX: ${tex.trim()}`,
  })
  return display ? h('div.display', [set]) : set
}
