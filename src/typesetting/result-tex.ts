import { spokenShown } from '../formula/spoken.ts'
import { texNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { standsClose, unitTex } from '../quantity/unit.ts'
import type { Typeset } from './substitution-tex.ts'

/** A result: the number in bold, its unit upright. */
export function resultOf(shown: Shown): Typeset {
  const unit = unitTex(shown.unit)
  const gap = unit && !standsClose(shown.unit) ? '\\;' : ''
  return { tex: `{\\mathbf{${texNumber(shown.digits)}}${gap}${unit}}`, spoken: spokenShown(shown) }
}
