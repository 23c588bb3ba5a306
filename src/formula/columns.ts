import { type Column, oneBy, oneKernels, twoBy, twoKernels } from './column-kernels.ts'
import type { Operation } from './operation.ts'
import { operationsOf, type SeatOf } from './operations.ts'
import type { Formula } from './types.ts'

/** Columns of equal length: each slot's numbers in so many runs. */
export interface Sheet {
  readonly slot: (at: number) => Column
  /** A column that holds this number everywhere, to be read only. */
  readonly constant: (value: number) => Column
  /** Columns for what is worked out on the way: the same one for the same depth. */
  readonly spare: (depth: number) => Column
}

/** Works the first so many rows. */
export type Work = (rows: number) => void

/** A formula over columns: `works` one after another leave its values in `values`, with the same bits as its closure gives row by row. */
export interface Columned {
  readonly works: readonly Work[]
  readonly values: Column
}

/** The formula must be proved first. */
export const columned = (formula: Formula, seatOf: SeatOf, sheet: Sheet): Columned =>
  columnOf(operationsOf(formula.tree, seatOf), sheet, 0)

/** Uses the spare columns from `depth` on, and leaves those before as they are. */
function columnOf(operation: Operation, sheet: Sheet, depth: number): Columned {
  switch (operation.kind) {
    case 'constant':
      return { works: [], values: sheet.constant(operation.value) }
    case 'slot':
      return { works: [], values: sheet.slot(operation.at) }
    case 'one':
      return onOne(operation, sheet, depth)
    case 'two':
      return onTwo(operation, sheet, depth)
    case 'total':
      return total(operation.of, sheet, depth)
  }
}

function onOne({ name, apply, of }: Extract<Operation, { kind: 'one' }>, sheet: Sheet, depth: number): Columned {
  const x = columnOf(of, sheet, depth)
  const values = sheet.spare(depth)
  const kernel = name === 'other' ? oneBy(apply) : oneKernels[name]
  return { works: [...x.works, rows => kernel(values, x.values, rows)], values }
}

function onTwo(
  { name, apply, left, right }: Extract<Operation, { kind: 'two' }>,
  sheet: Sheet,
  depth: number,
): Columned {
  const a = columnOf(left, sheet, depth)
  const b = columnOf(right, sheet, depth + 1)
  const values = sheet.spare(depth)
  const kernel = name === 'other' ? twoBy(apply) : twoKernels[name]
  return { works: [...a.works, ...b.works, rows => kernel(values, a.values, b.values, rows)], values }
}

function total(of: readonly Operation[], sheet: Sheet, depth: number): Columned {
  const values = sheet.spare(depth)
  const works: Work[] = [rows => void values.fill(0, 0, rows)]
  for (const each of of) {
    const x = columnOf(each, sheet, depth + 1)
    works.push(...x.works, rows => twoKernels['+'](values, values, x.values, rows))
  }
  return { works, values }
}
