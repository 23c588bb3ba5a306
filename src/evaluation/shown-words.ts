import { plainNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { standsClose, unitText } from '../quantity/unit.ts'

/** A value as text: `26.08 kPa`, `30°`, `12 500`. */
export function shownWords({ digits, unit }: Pick<Shown, 'digits' | 'unit'> & Partial<Shown>): string {
  const name = unitText(unit)
  return `${plainNumber(digits)}${name && !standsClose(unit) ? ' ' : ''}${name}`
}
