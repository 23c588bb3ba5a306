import type { Plan, PlannedCheck } from '../evaluation/plan-types.ts'
import type { Numbers } from './attribute.ts'
import type { Naming } from './naming.ts'

/** Reads the numbers of a plan by shared identities; NaN where there is none. */
export function numbersOf(plan: Plan, slots: Float64Array, naming: Naming): Numbers {
  const values = new Map<string, number>()
  for (const named of plan.names.values())
    if (named.kind === 'number') values.set(naming.key(named.key), slots[named.slot] ?? Number.NaN)
  const checks = new Map<string, PlannedCheck>()
  for (const line of plan.trail) if (line.kind === 'check') checks.set(naming.lineId(line), line)
  return {
    value: key => values.get(key) ?? Number.NaN,
    ratio: id => {
      const check = checks.get(id)
      return check ? ratioOf(check, slots) : Number.NaN
    },
  }
}

/** Demand over capacity, as the package has it: of amounts from nought only. */
function ratioOf({ sides, guards }: PlannedCheck, slots: Float64Array): number {
  if (!sides || sides.unit.offset !== undefined || guards.some(guard => slots[guard] !== 1)) return Number.NaN
  const [demand, capacity] = [sides.demand(slots), sides.capacity(slots)]
  return capacity > 0 && demand >= 0 ? demand / capacity : Number.NaN
}
