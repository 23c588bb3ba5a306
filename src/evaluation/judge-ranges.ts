import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Plan, PlannedRange } from './plan-types.ts'
import { shownText } from './shown-text.ts'

/** Inputs outside what their method allows, or outside what is usual; by block, the first that stopped it. */
export function judgeRanges(
  plan: Plan,
  slots: Float64Array,
): { found: readonly Diagnostic[]; stopped: ReadonlyMap<number, Diagnostic> } {
  const found: Diagnostic[] = []
  const stopped = new Map<number, Diagnostic>()
  const numberOf = ({ entity }: PlannedRange): number => slots[entity.slot] ?? Number.NaN
  const left = plan.ranges.filter(range => Number.isFinite(numberOf(range)) && !range.keeps(numberOf(range)))
  const refused = new Set(left.flatMap(({ refuses, entity }) => (refuses ? [entity] : [])))
  for (const range of left) {
    // Of a value that is refused it need not be said that it is unusual too.
    if (!range.refuses && refused.has(range.entity)) continue
    const fault = outside(range, numberOf(range))
    found.push(fault)
    if (range.refuses && !stopped.has(range.block)) stopped.set(range.block, fault)
  }
  return { found, stopped }
}

function outside({ entity, refuses, says }: PlannedRange, value: number): Diagnostic {
  const head = `\`${entity.name}\` is ${shownText(entity, value)}; it`
  return refuses
    ? { rule: 'value-outside-range', severity: 'error', place: entity.place, says: `${head} must be ${says}` }
    : { rule: 'value-unusual', severity: 'warning', place: entity.place, says: `${head} is ${says}` }
}
