import type { Entity, Plan, PlannedAssumption } from '../evaluation/plan-types.ts'

/** An assumption that is a number, so that it can be varied. */
export interface Variable {
  readonly entity: Entity
  /** Its plausible range in coherent SI, where the author stated one that does not run backwards. */
  readonly range?: { readonly from: number; readonly to: number }
}

/** Assumptions in the order of the register: numbers, and by key the choices of words and the numbers that a choice is taken from. */
export function assumptionsOf({ blocks, chosen }: Plan): {
  readonly variables: readonly Variable[]
  readonly words: readonly string[]
  readonly chosen: readonly string[]
} {
  const rows = blocks.flatMap(block => (block?.kind === 'assume' ? block.rows : []))
  const isMoved = (named: PlannedAssumption['named']): named is Entity => named.kind === 'number' && !chosen.has(named)
  return {
    variables: rows.flatMap(row => (isMoved(row.named) ? [variableOf(row, row.named)] : [])),
    words: rows.flatMap(({ named }) => (named.kind === 'word' ? [named.key] : [])),
    chosen: rows.flatMap(({ named }) => (named.kind === 'number' && chosen.has(named) ? [named.key] : [])),
  }
}

function variableOf({ range }: PlannedAssumption, entity: Entity): Variable {
  return range && range.from.si <= range.to.si
    ? { entity, range: { from: range.from.si, to: range.to.si } }
    : { entity }
}
