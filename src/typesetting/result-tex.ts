import { spokenNumber, texNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { standsClose, unitSpoken, unitTex } from '../quantity/unit.ts'

/** TeX of a result: an equals sign, the number in bold, its unit upright. */
export function resultTex(shown: Shown): string {
  const unit = unitTex(shown.unit)
  const gap = unit && !standsClose(shown.unit) ? '\\;' : ''
  return `=\\nobreak {\\mathbf{${texNumber(shown.digits)}}${gap}${unit}}`
}

/** The same in words. */
export function spokenResult(shown: Shown): string {
  return `equals ${spokenNumber(shown.digits)} ${unitSpoken(shown.unit)}`.trimEnd()
}
