import { spokenShown } from '../formula/spoken.ts'
import { texNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { standsClose, unitTex } from '../quantity/unit.ts'
import type { Typeset } from './substitution-tex.ts'

/** A result: the number in bold, its unit upright; a link where it is a value made elsewhere. */
export function resultOf(shown: Shown, to?: string): Typeset {
  const unit = unitTex(shown.unit)
  const gap = unit && !standsClose(shown.unit) ? '\\;' : ''
  const tex = `{\\mathbf{${texNumber(shown.digits)}}${gap}${unit}}`
  return { tex: to === undefined ? tex : `\\href{#${to}}{${tex}}`, spoken: spokenShown(shown) }
}
