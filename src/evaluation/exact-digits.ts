import { digitsOf, figuresOf, typedDigits } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Unit } from '../quantity/types.ts'
import type { Entity } from './plan-types.ts'

const mostFigures = 6

/**
 * The digits of an author's own value in a unit, where they are exact: as typed in that unit, or carried into it without
 * loss in at most six figures (1800 mm is exactly 1.8 m). Nothing for a value that was worked out.
 */
export function exactDigits(
  entity: Entity,
  about: { readonly si: number; readonly start: Float64Array; readonly unit: Unit },
): string | undefined {
  const origin = typedOf(entity)
  if (!origin?.typed) return undefined
  const { digits: own, unit } = origin.typed
  if (unit.text === about.unit.text && about.si === about.start[origin.slot]) return typedDigits(own)
  const value = inUnit(about.si, about.unit)
  const digits = trimmed(digitsOf(value, 12))
  const exact = Math.abs(Number(digits) - value) <= 1e-13 * Math.abs(value)
  return exact && figuresOf(digits) <= mostFigures ? digits : undefined
}

/** The author's own value behind one that is handed on unchanged. */
function typedOf(entity: Entity): Entity | undefined {
  let at: Entity | undefined = entity
  while (at && !at.typed) at = at.same
  return at
}

/** Without the noughts that only padding brought. */
const trimmed = (digits: string): string =>
  digits.includes('.') && !digits.includes('e') ? digits.replace(/\.?0+$/, '') : digits
