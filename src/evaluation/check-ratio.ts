import type { PlannedCheck } from './plan-types.ts'

/**
 * Demand over capacity, where both are amounts from nought: a ratio of temperatures or of a negative capacity says nothing. Nothing
 * where the check is not one comparison or a side has no value.
 */
export function checkRatio({ sides }: PlannedCheck, slots: Float64Array): number | undefined {
  if (!sides || sides.unit.offset !== undefined) return undefined
  const [demand, capacity] = [sides.demand(slots), sides.capacity(slots)]
  return capacity > 0 && demand >= 0 && Number.isFinite(demand / capacity) ? demand / capacity : undefined
}
