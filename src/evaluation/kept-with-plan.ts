import type { Plan } from './plan-types.ts'

/** Makes something of a plan once, with its second methods and without, and keeps it as long as the plan. */
export function keptWithPlan<T>(make: (plan: Plan, second: boolean) => T): (plan: Plan, second: boolean) => T {
  const [withSecond, without] = [new WeakMap<Plan, { readonly made: T }>(), new WeakMap<Plan, { readonly made: T }>()]
  return (plan, second) => {
    const kept = second ? withSecond : without
    const found = kept.get(plan) ?? { made: make(plan, second) }
    kept.set(plan, found)
    return found.made
  }
}
