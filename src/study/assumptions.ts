import type { Entity, Plan, PlannedAssumption } from '../evaluation/plan-types.ts'

/** An assumption that is a number, so that it can be varied. */
export interface Variable {
  readonly entity: Entity
  /** Its plausible range in coherent SI, where the author stated one that does not run backwards. */
  readonly range?: { readonly from: number; readonly to: number }
}

/** Assumptions in the order of the register: numbers, and choices of words by key. */
export function assumptionsOf(plan: Plan): {
  readonly variables: readonly Variable[]
  readonly words: readonly string[]
} {
  const rows = plan.blocks.flatMap(block => (block?.kind === 'assume' ? block.rows : []))
  return {
    variables: rows.flatMap(row => (row.named.kind === 'number' ? [variableOf(row, row.named)] : [])),
    words: rows.flatMap(({ named }) => (named.kind === 'word' ? [named.key] : [])),
  }
}

function variableOf({ range }: PlannedAssumption, entity: Entity): Variable {
  return range && range.from.si <= range.to.si
    ? { entity, range: { from: range.from.si, to: range.to.si } }
    : { entity }
}
