import { dimensionless } from '../quantity/dimension.ts'
import type { Unit } from '../quantity/types.ts'

/** Degrees, percent and the like are part of how a number is written: they stay where units of a line are left away. */
export const staysInLine = (unit: Unit): boolean => unit.dimension === dimensionless && unit.text !== ''

/** The unit that is printed behind a number: in a bare line only one that belongs to the number itself. */
export const unitInLine = (unit: Unit, bare: boolean): Unit | undefined =>
  bare && !staysInLine(unit) ? undefined : unit
