import { compile } from '../formula/compile.ts'
import { prove } from '../formula/prove.ts'
import type { Formula, Kind, Seat } from '../formula/types.ts'
import type { Draft } from './draft.ts'
import type { Entity, Operands, Points } from './plan-types.ts'

/** What a name of a formula stands for in one scope. */
export type Find = (name: string) => Entity | readonly Entity[] | Points | undefined

const kindOf = (found: Entity | readonly Entity[] | Points): Kind => {
  if ('kind' in found) {
    if (found.kind === 'points') return { kind: 'table', ...found.kinds }
    return kindOfEntity('value', found)
  }
  const first = found[0]
  if (!first) throw new Error('a list without rows cannot be used')
  return kindOfEntity('list', first)
}

const kindOfEntity = (kind: 'value' | 'list', { dimension, point }: Entity): Kind => ({ kind, dimension, point })

/** Where the numbers of what a name stands for are found. */
export const seatOf = (found: Entity | readonly Entity[] | Points): Seat => {
  if ('kind' in found) {
    return found.kind === 'points' ? { kind: 'table', x: found.x, y: found.y } : { kind: 'slot', slot: found.slot }
  }
  return { kind: 'slots', slots: found.map(entity => entity.slot) }
}

/** The operands of a formula, all of which are known. */
export function operandsOf(formula: Formula, find: Find): Operands {
  const operands = new Map<string, Entity | readonly Entity[] | Points>()
  for (const name of formula.names) {
    const found = find(name)
    if (!found) throw new Error(`formula \`${formula.text}\`: nothing is called \`${name}\``)
    operands.set(name, found)
  }
  return operands
}

/** Dimension faults of a formula in a scope, in the units of the notebook's system, or its result. */
export const proveIn = ({ system }: Pick<Draft, 'system'>, formula: Formula, find: Find) =>
  prove(
    formula,
    name => {
      const found = find(name)
      return found && kindOf(found)
    },
    { system },
  )

/** The formula as a plain function over the slots. */
export const compileIn = (formula: Formula, find: Find) =>
  compile(formula, name => {
    const found = find(name)
    if (!found) throw new Error(`formula \`${formula.text}\`: nothing is called \`${name}\``)
    return seatOf(found)
  })

/** All entities among the operands, lists opened. */
export function entitiesOf(operands: Operands): Entity[] {
  return [...operands.values()].flatMap(found => {
    if (!('kind' in found)) return [...found]
    return found.kind === 'points' ? [] : [found]
  })
}
