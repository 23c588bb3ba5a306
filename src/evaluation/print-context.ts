import { digitsOf } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import type { Numbering } from './anchors.ts'
import type { Results } from './evaluate.ts'
import { exactDigits } from './exact-digits.ts'
import type { Entity, PlannedLine } from './plan-types.ts'
import type { Doubt, Printed } from './workings.ts'

/** What printing needs to know at every place. */
export interface PrintContext {
  readonly results: Results
  readonly numbering: Numbering
  readonly figures: number
  /** What speaks against the checks of calculations. */
  readonly doubts: ReadonlyMap<PlannedLine, readonly Doubt[]>
  /** Digits of the result where an entity's own line has printed it; filled line by line. */
  readonly printed: Map<Entity, Shown>
}

/** Whether there is something to print: words, or a finite number. */
export const isKnown = (context: PrintContext, value: Entity | string): boolean =>
  typeof value === 'string' || Number.isFinite(siOf(context, value))

export const siOf = (context: PrintContext, entity: Entity): number => context.results.slots[entity.slot] ?? Number.NaN

/** Digits of a value in a unit where they are exact: the author's own, a table's, or those of a line that only hands them on. */
export function exactOf(context: PrintContext, entity: Entity, unit: Unit = entity.unit): string | undefined {
  const { results } = context
  const own = context.printed.get(entity)
  if (own?.exact && own.unit.text === unit.text) return own.digits
  return exactDigits(entity, { si: siOf(context, entity), start: results.plan.start, unit })
}

/** A value as it stands away from its own line: exact digits, its own line's digits, or the notebook's figures. */
export function shownOf(context: PrintContext, entity: Entity, more: { unit?: Unit; figures?: number } = {}): Shown {
  const unit = more.unit ?? entity.unit
  if (more.figures === undefined) {
    const exact = exactOf(context, entity, unit)
    if (exact !== undefined) return { digits: exact, unit, exact: true }
    const own = context.printed.get(entity)
    if (own && own.unit.text === unit.text) return { ...own, exact: false }
  }
  return {
    digits: digitsOf(inUnit(siOf(context, entity), unit), more.figures ?? context.figures),
    unit,
    exact: false,
  }
}

/** A value with its symbol and the anchor of its origin. */
export function printedOf(context: PrintContext, entity: Entity, shown: Shown = shownOf(context, entity)): Printed {
  const to = context.numbering.origins.get(entity)?.id
  return { symbol: entity.symbol, shown, ...(to ? { to } : {}) }
}
