import { dimensionless } from '../quantity/dimension.ts'
import type { Unit } from '../quantity/types.ts'
import type { Node } from './types.ts'

/** Degrees, percent and the like are part of how a number is written: they stay where units of a line are left away. */
export const staysInLine = (unit: Unit): boolean => unit.dimension === dimensionless && unit.text !== ''

/** The unit that is printed behind a number: in a bare line only one that belongs to the number itself. */
export const unitInLine = (unit: Unit, bare: boolean): Unit | undefined =>
  bare && !staysInLine(unit) ? undefined : unit

/** Nought of any unit is nought, save on a scale that begins elsewhere: it is printed without a unit, `max(0, a - b)`. */
export const isNought = ({ text, unit }: Pick<Extract<Node, { kind: 'quantity' }>, 'text' | 'unit'>): boolean =>
  Number(text) === 0 && unit.offset === undefined

/** The unit that is printed behind a literal of a formula. */
export const unitOfLiteral = (
  node: Pick<Extract<Node, { kind: 'quantity' }>, 'text' | 'unit'>,
  bare: boolean,
): Unit | undefined => (isNought(node) ? undefined : unitInLine(node.unit, bare))
