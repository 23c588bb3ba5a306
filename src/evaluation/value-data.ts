import { dimensionName } from '../quantity/dimension-names.ts'
import type { Shown } from '../quantity/types.ts'
import type { Results } from './evaluate.ts'
import type { Entity } from './plan-types.ts'
import { numberData } from './shown-data.ts'

/** The number of this key; nothing where there is none. */
export function entityOf(results: Results, key: string): Entity | undefined {
  const named = results.plan.names.get(key)
  return named?.kind === 'number' ? named : undefined
}

/** A number as plain data: in coherent SI at full precision, and as printed. */
export function valueData(results: Results, entity: Entity, shown: Shown) {
  return {
    symbol: entity.symbol,
    si: results.slots[entity.slot] ?? Number.NaN,
    dimension: dimensionName(entity.dimension),
    ...numberData(shown),
  }
}

type Place = { readonly line: number; readonly column: number }
/** Line and column, from 1. */
export const placeData = ({ line, column }: Place): Place => ({ line, column })
