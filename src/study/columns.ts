import type { Entity, Plan } from '../evaluation/plan-types.ts'
import { restingOn } from '../evaluation/resting.ts'
import type { Column } from '../formula/column-kernels.ts'
import { worksOf } from './op-columns.ts'
import { slotSheet } from './sheet.ts'
import { baseOf, type Moving } from './varied.ts'

/** A plan to be run for many values of some assumptions at a time: each run a row of the columns. */
export interface Columns extends Moving {
  /** So many rows at a time. */
  readonly length: number
  /**
   * Works out the first `rows` rows, with the assumptions at the SI values of their columns there. Refuses (throws) a value that is not finite.
   */
  readonly at: (values: readonly Column[], rows: number) => void
  /** The numbers of a slot, one a row: lent, the next call writes over them. */
  readonly column: (slot: number) => Column
}

/** So many rows that what is worked out together stays near the processor, and few enough for what is said once for all rows. */
const usualLength = 128

/** Prepares runs with `assumptions` changed, many at a time: every row has the numbers that `run` gives. Second methods are left out. */
export function columns(plan: Plan, assumptions: readonly Entity[], length = usualLength): Columns {
  const base = baseOf(plan)
  const { ops, moved } = restingOn(
    plan,
    assumptions.map(({ slot }) => slot),
    { second: false },
  )
  const sheet = slotSheet(length, { start: plan.start, base, moved })
  const works = ops.flatMap(op => worksOf(op, sheet))
  const at = (values: readonly Column[], rows: number): void => {
    sheet.restart(rows)
    for (const [index, entity] of assumptions.entries()) put(sheet.slot(entity.slot), values[index], { entity, rows })
    for (const work of works) work(rows)
  }
  return { plan, base, moved, solves: ops.filter(op => op.solves).length, length, at, column: sheet.slot }
}

function put(into: Column, values: Column | undefined, { entity, rows }: { entity: Entity; rows: number }): void {
  for (let row = 0; row < rows; row += 1) {
    const si = values?.[row] ?? Number.NaN
    if (!Number.isFinite(si)) throw new RangeError(`\`${entity.key}\` cannot be ${si}`)
    into[row] = si
  }
}

/** Reads some slots of one row after another into slots that hold everything else as written. The array is lent. */
export function rowsOf({ base, moved, column }: Columns, slots: Iterable<number>): (row: number) => Float64Array {
  const read = [...new Set(slots)].filter(moved).map(slot => ({ slot, column: column(slot) }))
  const numbers = base.slice()
  return row => {
    for (const each of read) numbers[each.slot] = each.column[row] as number
    return numbers
  }
}
