import type { AssumptionRow, BlockWorking, GivenRow, Workings } from '../evaluation/workings.ts'

/** Rows of assumptions and of what blocks are given that do not say what they said under the same name. */
export function changedRows(old: Workings, now: Workings): string[] {
  const before = new Map(rowsOf(old).map(({ key, said }) => [key, said]))
  return rowsOf(now).flatMap(({ key, said, id }) => (before.get(key) === said ? [] : [id]))
}

/** Rows of every register. */
export const assumptionsOf = ({ blocks }: Workings): readonly AssumptionRow[] =>
  blocks.flatMap(block => (block.kind === 'assume' ? block.rows : []))

const rowsOf = (workings: Workings): { key: string; id: string; said: string }[] =>
  workings.blocks.flatMap(block =>
    [...rowsIn(block)].map(row => ({ key: `${block.name}.${row.name}`, id: row.id, said: saidBy(row) })),
  )

function rowsIn(block: BlockWorking): readonly (AssumptionRow | GivenRow)[] {
  if (block.kind === 'assume') return block.rows
  return block.kind === 'calc' ? block.given : []
}

/** Everything a reader sees of the row but numbers of other lines, which move when lines are put in. */
function saidBy(row: AssumptionRow | GivenRow): string {
  const value = typeof row.value === 'string' ? row.value : [row.value.digits, row.value.unit.text]
  if (!('basis' in row)) return JSON.stringify([row.symbol, value])
  const { symbol, basis, status, closes, range, evidence } = row
  return JSON.stringify([symbol, value, basis, status, closes, evidence, range?.from.digits, range?.to.digits])
}
