import { isAtMost } from '../quantity/tolerance.ts'
import type { PlannedAssume, PlannedAssumption } from './plan-types.ts'
import { type PrintContext, shownOf, siOf } from './print-context.ts'
import { typedShown } from './typed-shown.ts'
import type { AssumptionRow } from './workings.ts'

export type UsersOf = (key: string) => AssumptionRow['users']

/** The rows of one assumption block, with who uses each. */
export function printAssume(context: PrintContext, block: PlannedAssume, usersOf: UsersOf): AssumptionRow[] {
  const blockName = context.results.plan.notebook.blocks[block.index]?.name.text ?? ''
  return block.rows.map(row => rowOf(context, row, { blockName, users: usersOf(row.named.key) }))
}

function rowOf(
  context: PrintContext,
  row: PlannedAssumption,
  about: { blockName: string; users: AssumptionRow['users'] },
): AssumptionRow {
  const { assumption, named } = row
  const origin = context.numbering.assumptions.get(named.key) ?? { id: '', number: '' }
  const si = named.kind === 'number' ? siOf(context, named) : Number.NaN
  const range = row.range && {
    from: typedShown(row.range.from),
    to: typedShown(row.range.to),
    inside: isAtMost(row.range.from.si, si) && isAtMost(si, row.range.to.si),
  }
  const measured = typeof row.measured === 'object' ? typedShown(row.measured) : row.measured
  return {
    ...origin,
    block: about.blockName,
    name: assumption.name.text,
    symbol: assumption.symbol?.text ?? '',
    value: named.kind === 'number' ? shownOf(context, named) : named.text,
    basis: assumption.basis?.text ?? '',
    status: assumption.status,
    closes: assumption.closes?.text ?? '',
    ...(range ? { range } : {}),
    ...(measured === undefined ? {} : { measured }),
    evidence: assumption.evidence?.text ?? '',
    users: about.users,
    place: assumption.name.place,
  }
}
