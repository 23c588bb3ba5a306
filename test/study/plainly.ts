import { readFileSync } from 'node:fs'
import { plan } from '../../src/evaluation/plan.ts'
import type { Plan } from '../../src/evaluation/plan-types.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'

export const examples = ['skerry-point', 'marrow-flats', 'kelder-lock'] as const

export function exampleOf(name: (typeof examples)[number]): Plan {
  const path = `examples/${name}/${name}.md`
  return plan(readNotebook(readFileSync(path, 'utf8'), { path }), catalogue)
}

/** Every op done one after another, with other numbers in some slots: what nothing quicker may differ from. */
export function plainly(
  planned: Plan,
  changed: ReadonlyMap<number, number>,
  { second } = { second: false },
): Float64Array {
  const slots = Float64Array.from(planned.start)
  for (const [slot, si] of changed) slots[slot] = si
  for (const op of planned.ops) if (second || !op.second) op.run(slots)
  return slots
}
