import { digitsOf, plainNumber } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import { unitText } from '../quantity/unit.ts'
import type { Entity } from './plan-types.ts'

/** A value in words of a message: as typed where the author typed it, otherwise to four figures in its own unit. */
export function shownText(entity: Entity, si: number): string {
  const { typed, unit } = entity
  const digits = typed ? typed.digits : digitsOf(inUnit(si, unit), 4)
  const name = unitText(typed ? typed.unit : unit)
  return name ? `${plainNumber(digits)} ${name}` : plainNumber(digits)
}
