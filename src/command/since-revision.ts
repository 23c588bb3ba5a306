import { compareNotebooks } from '../comparison/compare.ts'
import type { CheckMove, Comparison } from '../comparison/types.ts'
import type { Workings } from '../evaluation/workings.ts'
import { catalogue } from '../modules/catalogue.ts'
import type { Since } from '../sheets/since.ts'
import { doubtTurn, ratioText } from './check-words.ts'
import { changeName, changeText, plainLine, stepText } from './comparison-words.ts'
import { countOf } from './count-of.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { byBlock, ranges } from './line-numbers.ts'
import { movedBy, namesOf, ratioEnds } from './moved-by-words.ts'
import { assumptionsOf, changedRows } from './since-rows.ts'

/** The older notebook that a package is set against. */
export interface OldSide {
  /** `A (032a498dc1)`, or the name of a file: no folder of this machine. */
  readonly label: string
  readonly evaluated: Evaluated
  /** What is to be said of it besides, in sentences. */
  readonly says: readonly string[]
}

/** What a package says of the changes since an older notebook. */
export function sinceRevision(old: OldSide, now: Evaluated): Since {
  const comparison = compareNotebooks(old.evaluated, now, { modules: catalogue, threshold: 0.01 })
  const { revision } = old.evaluated.notebook.title
  return {
    revision: [old.label, revision ? `revision ${revision}` : ''].filter(Boolean).join(', '),
    says: [...old.says, ...errorWords(old)],
    changes: changesOf(comparison, now.workings),
    checks: checksOf(comparison, now.workings),
    ...recheckOf(comparison),
    changed: [...changedLines(comparison), ...changedRows(old.evaluated.workings, now.workings)],
  }
}

function changesOf({ changes }: Comparison, workings: Workings): Since['changes'] {
  const ids = new Map(assumptionsOf(workings).map(row => [`${row.block}.${row.name}`, row.id]))
  return changes.flatMap(change => {
    const to = ids.get(change.key)
    const row = {
      name: changeName(change),
      text: asPrinted(change),
      by: stepText(change),
      ...(to ? { to } : {}),
    }
    const fields = change.fields.map(({ field, old, now }) => ({
      name: '',
      text: `${field}: ${plainLine(old) || 'nothing'} → ${plainLine(now) || 'nothing'}`,
      by: '',
    }))
    return [row, ...fields]
  })
}

/** Values in the print of units, `20 kN/m² → 30 kN/m²`; other texts as they were written. */
function asPrinted(change: Comparison['changes'][number]): string {
  const text = plainLine(changeText(change))
  return change.step ? text.replaceAll('^2', '²').replaceAll('^3', '³').replaceAll('*', '·') : text
}

function checksOf(comparison: Comparison, workings: Workings): Since['checks'] {
  const names = namesOf(comparison)
  const ids = new Map(workings.blocks.flatMap(({ checks }) => checks.map(({ number, id }) => [number, id])))
  const moved = comparison.checks.filter(check => turnOf(check) !== '' || ratioText(check)[0] !== ratioText(check)[1])
  const rows = moved.map(check => {
    const [old, now] = ratioText(check)
    const by = movedBy(check.moved, { names, ends: ratioEnds(check) }).join(', ')
    const says = `${check.block}: ${plainLine(check.says)}`
    return { id: ids.get(check.number) ?? '', number: check.number, says, old, now, turned: turnOf(check), by }
  })
  return rows.toSorted((a, b) => Number(b.turned !== '') - Number(a.turned !== ''))
}

/** The old notebook's errors are no fault of what is compared with it, but they leave values out. */
export function errorWords({
  label,
  evaluated: { status, diagnostics },
}: Pick<OldSide, 'label' | 'evaluated'>): string[] {
  if (status !== exitStatus.notebook) return []
  return [`The old notebook (${label}) has ${countOf(diagnostics).errors}: what they stop cannot be compared`]
}

function turnOf({ turn, old, now }: CheckMove): string {
  if (turn === 'added' || turn === 'removed') return turn
  if (turn === 'as before') return doubtTurn(old, now)
  return now?.satisfied ? 'satisfied now' : 'NOT SATISFIED'
}

function recheckOf({ recheck }: Comparison): Pick<Since, 'recheck' | 'lines'> {
  const standing = recheck.differ.filter(({ kind }) => kind !== 'removed')
  const gone = recheck.differ.length - standing.length
  const head = `${standing.length} of ${recheck.lines} lines differ, ${recheck.same.length} more rest on a change and print the same, ${recheck.cannot} rest on nothing that changed and cannot have moved`
  return {
    recheck: gone > 0 ? `${head}; ${gone} are gone` : head,
    lines: [...byBlock(standing)].map(([block, lines]) => ({
      block,
      numbers: ranges(lines.map(({ number }) => number)),
    })),
  }
}

const changedLines = ({ recheck }: Comparison): string[] =>
  recheck.differ.flatMap(({ kind, id }) => (kind === 'removed' ? [] : [id]))
