import { checkRatio } from '../evaluation/check-ratio.ts'
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

const ratioOf = (check: PlannedCheck, slots: Float64Array): number =>
  check.guards.every(guard => slots[guard] === 1) ? (checkRatio(check, slots) ?? Number.NaN) : Number.NaN
