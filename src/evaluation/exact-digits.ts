import { digitsOf, figuresOf, typedDigits } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Unit } from '../quantity/types.ts'
import type { Entity } from './plan-types.ts'

const mostFigures = 6

/**
 * The digits of an author's own value in a unit, where they are exact: as typed in that unit, or carried into it without
 * loss in at most six figures (1800 mm is exactly 1.8 m). Nothing for a value that was worked out.
 */
export function exactDigits(entity: Entity, about: { si: number; start: number; unit: Unit }): string | undefined {
  const typed = typedOf(entity)
  if (!typed) return undefined
  if (typed.unit.text === about.unit.text && (Number.isNaN(about.start) || about.si === about.start))
    return typedDigits(typed.digits)
  const value = inUnit(about.si, about.unit)
  const digits = trimmed(digitsOf(value, 12))
  const exact = Math.abs(Number(digits) - value) <= 1e-13 * Math.abs(value)
  return exact && figuresOf(digits) <= mostFigures ? digits : undefined
}

/** The typed characters behind a value that is handed on unchanged. */
function typedOf(entity: Entity): Entity['typed'] {
  let at: Entity | undefined = entity
  while (at && !at.typed) at = at.same
  return at?.typed
}

/** Without the noughts that only padding brought. */
const trimmed = (digits: string): string =>
  digits.includes('.') && !digits.includes('e') ? digits.replace(/\.?0+$/, '') : digits
