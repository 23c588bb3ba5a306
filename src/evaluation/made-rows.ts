import type { MadeRows } from '../modules/module.ts'
import { one } from '../quantity/unit.ts'
import { newSlot } from './draft.ts'
import type { Stage } from './module-scope.ts'
import type { Entity, Row } from './plan-types.ts'
import { type ListRow, newScope } from './scope.ts'

/** Rows that a method makes: each with nothing in it but its number, which is printed as a plain number. */
export function madeRows(stage: Stage, list: string, { count, number }: MadeRows): readonly ListRow[] {
  const rows: ListRow[] = []
  for (let index = 0; index < count; index += 1) {
    const scope = newScope(stage.scope, rows.at(-1)?.scope)
    const row: Row = { list, index, of: count, label: '', made: true }
    scope.names.set(number, numberOf(stage, number, row))
    rows.push({ scope, row })
  }
  return rows
}

/** The number of a row, counted from 1. Its symbol has no index: it is the index. */
function numberOf({ draft, block, blockName, place }: Stage, number: string, row: Row): Entity {
  const name = `${number}_${row.index + 1}`
  return {
    kind: 'number',
    key: `${blockName}.${name}`,
    name,
    block,
    origin: 'step',
    slot: newSlot(draft, row.index + 1),
    dimension: one.dimension,
    point: false,
    unit: one,
    symbol: number,
    says: 'number of the row',
    place,
    row,
    typed: { digits: `${row.index + 1}`, unit: one },
  }
}
