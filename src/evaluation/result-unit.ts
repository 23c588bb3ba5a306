import { displayPoint, displayUnit } from '../quantity/display-unit.ts'
import type { Dimension, Unit } from '../quantity/types.ts'
import { unitOf } from '../quantity/unit.ts'
import type { Draft } from './draft.ts'

interface ResultAbout {
  readonly dimension: Dimension
  /** A temperature on a scale. */
  readonly point?: boolean | undefined
  readonly choice?: { readonly SI: string; readonly US: string } | undefined
  readonly to?: Unit | undefined
}

/** The unit of a result: the formula's `to`, the module's choice, or the system's. */
export function resultUnit({ system }: Pick<Draft, 'system'>, { dimension, point, choice, to }: ResultAbout): Unit {
  if (to) return to
  if (choice) return unitOf(choice[system])
  return point ? displayPoint(system) : displayUnit(dimension, system)
}
