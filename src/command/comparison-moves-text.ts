import type { CheckMove, Comparison, ResultMove } from '../comparison/types.ts'
import { ratioText, standingOf, verdictText } from './check-words.ts'
import { fitted, named, nameWidth, table, wrapped } from './comparison-lines.ts'
import { plainLine, shareText, valueText } from './comparison-words.ts'
import { plural } from './count-of.ts'
import { movedBy, type Names, ratioEnds, resultEnds } from './moved-by-words.ts'

/** What turned, and how the checks stand. */
export function turnedOf({ checks, verdicts, errors }: Comparison, names: Names): string[] {
  const turned = checks.filter(isTurned)
  const lines = [
    ...turned.flatMap(check => {
      const word = check.now?.satisfied ? 'satisfied now' : 'NOT SATISFIED'
      return named(`${word}  ${check.number}`, `${check.block}: ${plainLine(check.says)}`).concat(
        moveLines(check, names),
      )
    }),
    ...verdicts.flatMap(verdict => wrapped([`  ${plainLine(verdictText(verdict))}`], '', '      ')),
  ]
  const title = lines.length === 0 ? 'No check, limit or second method turned' : 'Turned'
  return [...(errors.now > 0 ? [stopped(errors.now)] : []), title, ...lines, `  ${standingOf(checks)}`]
}

const stopped = (errors: number): string =>
  `The new notebook has ${plural(errors, 'error')}: what they stop is not shown`

const isTurned = ({ turn, now }: CheckMove): boolean =>
  turn.startsWith('turned') || (turn === 'added' && now?.satisfied === false)

function moveLines(check: CheckMove, names: Names): string[] {
  const [old, now] = ratioText(check)
  const by = movedBy(check.moved, { names, ends: ratioEnds(check) })
  return wrapped(
    [`ratio ${old} → ${now}`, ...(by.length > 0 ? [`by ${by.join(', ')}`] : [])],
    ' '.repeat(nameWidth + 4),
  )
}

/** Ratios of checks that moved and did not turn. */
export function checksOf({ checks }: Comparison, names: Names): string[] {
  const moved = checks.filter(
    check => check.differs && !isTurned(check) && ratioText(check).join() !== '–,–' && isApart(check),
  )
  if (moved.length === 0) return []
  const rows = moved.map(check => {
    const [old, now] = ratioText(check)
    const by = movedBy(check.moved, { names, ends: ratioEnds(check) }).join(', ')
    const tag = check.turn === 'added' || check.turn === 'removed' ? check.turn : by
    return { cells: [check.number, fitted(`${check.block}: ${plainLine(check.says)}`, 40), `${old} → ${now}`], by: tag }
  })
  const title = `Ratios of checks that moved (${moved.length} of ${checks.length} checks), demand to capacity`
  return [title, ...table(rows), ...(rows.some(({ by }) => / [−+]/.test(by)) ? rule : [])]
}

/** How a move is taken apart, where it is. */
const rule = [
  '  Each part is what the change does by itself to the old notebook; `together` is the rest of the move,',
  '  which is what the changes do to each other, so that the parts add up.',
]

const isApart = (check: CheckMove): boolean => {
  const [old, now] = ratioText(check)
  return old !== now
}

/** Results that moved, with who moved them. */
export function resultsOf({ results, below, threshold }: Comparison, names: Names): string[] {
  if (results.length + below === 0) return []
  const percent = `${Number((threshold * 100).toPrecision(6))} percent`
  const less = below > 0 ? `; ${below} more moved by less` : ''
  const rows = results.map(result => ({ cells: resultCells(result), by: resultBy(result, names) }))
  return [`Results that moved by ${percent} or more (${results.length}${less})`, ...table(rows)]
}

function resultCells({ number, key, old, now, share }: ResultMove): string[] {
  const of = (shown: ResultMove['old']): string => (shown ? valueText(shown) : '–')
  return [number, key, of(old), of(now), share === undefined ? '' : shareText(share)]
}

function resultBy(result: ResultMove, names: Names): string {
  if (!result.old) return 'new'
  if (!result.now) return 'gone'
  return movedBy(result.moved, { names, ends: resultEnds(result) }).join(', ')
}
