import type { LookStep } from '../modules/module.ts'
import { type Looked, lookIn } from '../modules/numerics/look-in.ts'
import type { Axis, Table } from '../modules/table.ts'
import { fromUnit, inUnit } from '../quantity/to-unit.ts'
import { unitOf } from '../quantity/unit.ts'
import { pushOp } from './draft-ops.ts'
import { addLine, declare, inputKey, lineBase, moduleFault, type Stage } from './module-scope.ts'
import type { Entity } from './plan-types.ts'
import { findIn, wordIn } from './scope.ts'
import { settled } from './settled.ts'

/** Plans a look-up: a word picks its row or column at once, a number is interpolated when it is known. */
export function planLook(stage: Stage, step: LookStep): void {
  const { table } = step
  const tableUnit = unitOf(table.unit)
  const gives = declare(stage, {
    ...step,
    dimension: tableUnit.dimension,
    fixedUnit: step.unit ? undefined : tableUnit,
  })
  const rowKey = keyOf(stage, { axis: table.row, name: step.row })
  const columnKey = table.column && keyOf(stage, { axis: table.column, name: step.column ?? '' })
  const picks = [
    ...(typeof rowKey === 'number' ? [inputKey(stage, step.row)] : []),
    ...(typeof columnKey === 'number' ? [inputKey(stage, step.column ?? '')] : []),
  ]
  const run = (slots: Float64Array): void => {
    const found = lookAt({ table, rowKey, columnKey }, slots)
    slots[gives.slot] = found.ok ? settled(fromUnit(found.value, tableUnit)) : Number.NaN
  }
  const reads = [rowKey, columnKey].flatMap(key => (typeof key === 'object' ? [key.slot] : []))
  pushOp(stage.draft, stage, { reads, writes: [gives.slot], run })
  addLine(stage, {
    kind: 'look',
    ...lineBase(stage, { says: step.says, source: table.source }),
    gives,
    table,
    rowKey,
    tableUnit,
    picks,
    ...(columnKey === undefined ? {} : { columnKey }),
  })
}

/** The look-up at the numbers now in the slots. */
export function lookAt(
  line: { readonly table: Table; readonly rowKey: number | Entity; readonly columnKey?: number | Entity | undefined },
  slots: Float64Array,
): Looked {
  const at = (axis: Axis | undefined, key: number | Entity | undefined) =>
    axis?.kind === 'numbers' && typeof key === 'object'
      ? { value: inUnit(slots[key.slot] ?? Number.NaN, unitOf(axis.unit)) }
      : (key as number | undefined)
  return lookIn(line.table, { row: at(line.table.row, line.rowKey), column: at(line.table.column, line.columnKey) })
}

function keyOf(stage: Stage, about: { axis: Axis; name: string }): number | Entity {
  const { axis, name } = about
  if (axis.kind === 'words') {
    const word = wordIn(stage.scope, name)
    const index = word === undefined ? -1 : axis.keys.indexOf(word)
    if (index < 0) throw moduleFault(stage, `\`${name}\` does not pick a key of the axis "${axis.says}"`)
    return index
  }
  const found = findIn(stage.scope, name)
  if (!found || !('kind' in found)) throw moduleFault(stage, `no value is called \`${name}\``)
  if (found.dimension !== unitOf(axis.unit).dimension)
    throw moduleFault(stage, `\`${name}\` has not the dimension of the axis "${axis.says}"`)
  return found
}
