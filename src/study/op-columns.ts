import { seatOf } from '../evaluation/operands.ts'
import type { Doing, Op } from '../evaluation/plan-types.ts'
import { settled } from '../evaluation/settled.ts'
import type { Column } from '../formula/column-kernels.ts'
import { columned, type Work } from '../formula/columns.ts'
import type { SlotSheet } from './sheet.ts'

/** An op over the columns of a sheet: leaves in every row what the op leaves in the slots of one run. */
export function worksOf(op: Op, sheet: SlotSheet): readonly Work[] {
  switch (op.does?.kind) {
    case 'value':
      return formulaOf(op, op.does, sheet)
    case 'stop':
      return boundOf(op, op.does, sheet)
    case 'forget':
      return forgetOf(op.does, sheet)
    case undefined:
      return [rowByRow(op, sheet)]
  }
}

type Does<K extends Doing['kind']> = Extract<Doing, { readonly kind: K }>

/** Worked out in every row, put only where the guards hold. */
function formulaOf({ guards }: Op, { formula, operands, slot, truth }: Does<'value'>, sheet: SlotSheet): Work[] {
  const seat = (name: string) => {
    const found = operands.get(name)
    if (!found) throw new Error(`formula \`${formula.text}\`: nothing is called \`${name}\``)
    return seatOf(found)
  }
  const { works, values } = columned(formula, seat, sheet)
  const into = sheet.slot(slot)
  const mask = maskOf(guards, sheet)
  if (!mask) return [...works, rows => put(into, values, { rows, truth })]
  return [...works, ...mask.works, rows => putWhere(mask.column, into, values, { rows, truth })]
}

interface Put {
  readonly rows: number
  readonly truth: boolean
}

function put(into: Column, values: Column, { rows, truth }: Put): void {
  if (truth) for (let row = 0; row < rows; row += 1) into[row] = values[row] as number
  else for (let row = 0; row < rows; row += 1) into[row] = settled(values[row] as number)
}

function putWhere(mask: Column, into: Column, values: Column, { rows, truth }: Put): void {
  for (let row = 0; row < rows; row += 1)
    if (mask[row] === 1) into[row] = truth ? (values[row] as number) : settled(values[row] as number)
}

interface Mask {
  readonly works: readonly Work[]
  /** Holds 1 where all guards do. */
  readonly column: Column
}

/** Nothing where no guard stands before the op. */
function maskOf(guards: readonly number[], sheet: SlotSheet): Mask | undefined {
  const [first, ...more] = guards.map(sheet.slot)
  if (!first) return undefined
  if (more.length === 0) return { works: [], column: first }
  const column = sheet.mask
  const copy: Work = rows => {
    for (let row = 0; row < rows; row += 1) column[row] = first[row] as number
  }
  return { works: [copy, ...more.map(guard => onlyWhere(column, guard))], column }
}

const onlyWhere =
  (column: Column, guard: Column): Work =>
  rows => {
    for (let row = 0; row < rows; row += 1) if (guard[row] !== 1) column[row] = 0
  }

function boundOf({ guards }: Op, { slot, keeps, alive }: Does<'stop'>, sheet: SlotSheet): Work[] {
  const [numbers, into] = [sheet.slot(slot), sheet.slot(alive)]
  const mask = maskOf(guards, sheet)
  const stop: Work = rows => {
    for (let row = 0; row < rows; row += 1)
      if ((mask === undefined || mask.column[row] === 1) && !keeps(numbers[row] as number)) into[row] = 0
  }
  return [...(mask?.works ?? []), stop]
}

function forgetOf({ alive, slots }: Does<'forget'>, sheet: SlotSheet): Work[] {
  const columns = slots.map(sheet.slot)
  const lives = sheet.slot(alive)
  return [
    rows => {
      for (let row = 0; row < rows; row += 1)
        if (lives[row] !== 1) for (const column of columns) column[row] = Number.NaN
    },
  ]
}

/** What nothing is said of is run itself, on the numbers of one row after another. */
function rowByRow(op: Op, sheet: SlotSheet): Work {
  const touched = [...new Set([...op.reads, ...op.writes])].map(slot => ({ slot, column: sheet.slot(slot) }))
  const written = op.writes.map(slot => ({ slot, column: sheet.slot(slot) }))
  return rows => {
    for (let row = 0; row < rows; row += 1) {
      for (const { slot, column } of touched) sheet.row[slot] = column[row] as number
      op.run(sheet.row)
      for (const { slot, column } of written) column[row] = sheet.row[slot] as number
    }
  }
}
