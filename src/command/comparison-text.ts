import type { Change, CheckMove, Comparison, ResultMove } from '../comparison/types.ts'
import { textWidth } from '../diagnostic/text-width.ts'
import {
  byBlock,
  type ComparedAbout,
  changeText,
  movedBy,
  type Names,
  namesOf,
  plainLine,
  ranges,
  ratioEnds,
  ratioText,
  restatedText,
  resultEnds,
  shareText,
  standingOf,
  stepText,
  valueText,
  verdictText,
} from './comparison-words.ts'
import { plural } from './count-of.ts'

/** The comparison for a terminal of a hundred columns: what changed, what turned, what moved, what to check again. */
export function comparisonText(comparison: Comparison, about: ComparedAbout): string {
  const names = namesOf(comparison)
  const sections = [
    headOf(about),
    changesOf(comparison),
    turnedOf(comparison, names),
    checksOf(comparison, names),
    recheckOf(comparison, names),
    restatedOf(comparison),
    resultsOf(comparison, names),
  ]
  return sections
    .filter(lines => lines.length > 0)
    .map(lines => lines.join('\n'))
    .join('\n\n')
}

const wide = 100

function headOf({ title, old, now, editions }: ComparedAbout): string[] {
  const side = (name: string, { label, revision }: ComparedAbout['old']): string =>
    `${name}  ${plainLine(label)}${revision ? `, revision ${plainLine(revision)}` : ''}`
  return [plainLine(title), side('old', old), side('new', now), ...wrapped(editions.map(plainLine))]
}

function changesOf({ changes, grouped }: Comparison): string[] {
  if (changes.length === 0) return ['Nothing changed in meaning']
  const groups: readonly (readonly [string, (change: Change) => boolean])[] = [
    ['Assumptions', ({ what }) => what === 'assumption'],
    ['Blocks, inputs and formulas', ({ what }) => !['assumption', 'title', 'notice'].includes(what)],
    ['Title block, holds and cautions', ({ what }) => what === 'title' || what === 'notice'],
  ]
  const lines = groups.flatMap(([title, isOf]) => {
    const some = changes.filter(isOf)
    return some.length === 0 ? [] : [`${title} (${some.length})`, ...some.flatMap(changeLines)]
  })
  if (grouped.length === 0) return lines
  return [
    ...lines,
    ...wrapped([`${plural(grouped.length, 'change')} of formulas and blocks are put in as one, being many`]),
  ]
}

function changeLines(change: Change): string[] {
  const name = changeHead(change)
  const step = stepText(change)
  const said = `${plainLine(changeText(change))}${step ? `   ${step}` : ''}`
  const fields = change.fields.flatMap(({ field, old, now }) => fieldLines(field, plainLine(old), plainLine(now)))
  const isWordsOnly = change.old === change.now && change.fields.length > 0
  return [...(isWordsOnly ? [`  ${name}`] : named(name, said)), ...fields]
}

function changeHead({ what, key }: Change): string {
  if (what === 'check' || what === 'module' || what === 'notice') return what === 'notice' ? key : `${key} (${what})`
  return what === 'title' ? `${key} (title block)` : key
}

/** Both texts in one line where they fit; otherwise one below the other, so that they can be compared. */
function fieldLines(field: string, old: string, now: string): string[] {
  const head = `      ${field}: `
  const one = `${head}${quoted(old)} → ${quoted(now)}`
  if (textWidth(one) <= wide) return [one]
  return [...wrapped([`old: ${quoted(old)}`], head), ...wrapped([`new: ${quoted(now)}`], ' '.repeat(head.length))]
}

const quoted = (text: string): string => (text === '' ? 'nothing' : text)

const nameWidth = 28

/** A name and what is said of it, in two columns; a long text goes on below. */
function named(name: string, said: string): string[] {
  const head = `  ${padded(plainLine(name), nameWidth)}  `
  return wrapped([said], head)
}

function turnedOf({ checks, verdicts, errors }: Comparison, names: Names): string[] {
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

function checksOf({ checks }: Comparison, names: Names): string[] {
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

function resultsOf({ results, below, threshold }: Comparison, names: Names): string[] {
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

/** Rows in columns with who moved them at the end; what would pass the edge goes below. */
function table(rows: readonly { readonly cells: readonly string[]; readonly by: string }[]): string[] {
  const widths = (rows[0]?.cells ?? []).map((_, index) =>
    Math.max(...rows.map(({ cells }) => textWidth(cells[index] ?? ''))),
  )
  return rows.flatMap(({ cells, by }) => {
    const head = `  ${cells.map((cell, index) => padded(cell, widths[index] ?? 0)).join('  ')}`
    const one = `${head}  ${by}`.trimEnd()
    return textWidth(one) <= wide ? [one] : [head.trimEnd(), ...wrapped([by], ' '.repeat(12))]
  })
}

function recheckOf({ recheck, changes }: Comparison, names: Names): string[] {
  const { lines, differ, same, cannot, unexplained } = recheck
  const gone = differ.filter(({ kind }) => kind === 'removed')
  const standing = differ.filter(({ kind }) => kind !== 'removed')
  const head = `To check again: ${standing.length} of ${lines} lines differ, ${same.length} more rest on a change and print the same, ${cannot} rest on nothing that changed and cannot have moved${gone.length > 0 ? `; ${plural(gone.length, 'line')} gone` : ''}`
  const chains = changes.flatMap(({ id }) => {
    const own = differ.filter(line => line.changes.includes(id))
    const blocks = [...byBlock(own)].map(([block, some]) => `${block} ${some.length}`)
    return own.length === 0 ? [] : named(names(id), `${plural(own.length, 'line')}: ${blocks.join(', ')}`)
  })
  const numbers = [...byBlock(standing)].flatMap(([block, some]) =>
    named(block, ranges(some.map(({ number }) => number))),
  )
  const strange =
    unexplained.length > 0
      ? wrapped([`Without a cause that could be found, please report it: ${unexplained.join(', ')}`])
      : []
  const parts = [
    ...(chains.length > 0 ? ['  by change', ...chains] : []),
    ...(numbers.length > 0 ? ['  lines', ...numbers] : []),
  ]
  return [...wrapped([head], '', '  '), ...parts, ...strange]
}

function restatedOf(comparison: Comparison): string[] {
  const said = restatedText(comparison)
  return said.length === 0 ? [] : ['No change of meaning', ...said.flatMap(text => wrapped([plainLine(text)], '  '))]
}

const padded = (text: string, width: number): string => text + ' '.repeat(Math.max(0, width - textWidth(text)))

/** Cut to a width, with a sign that it was. */
function fitted(text: string, width: number): string {
  if (textWidth(text) <= width) return text
  let kept = ''
  for (const character of text) {
    if (textWidth(kept + character) > width - 1) break
    kept += character
  }
  return `${kept.trimEnd()}…`
}

/** Texts one below the other, each broken at blanks; `first` stands before the first line, `rest` (as wide as `first`) before the others. */
function wrapped(texts: readonly string[], first = '', rest = ' '.repeat(textWidth(first))): string[] {
  const lines: string[] = []
  for (const text of texts) {
    let line = lines.length === 0 ? first : rest
    let isEmpty = true
    for (const word of text.split(/(?<=\S) (?=\S)/)) {
      if (!isEmpty && textWidth(line) + 1 + textWidth(word) > wide) {
        lines.push(line.trimEnd())
        line = rest
        isEmpty = true
      }
      line += isEmpty ? word : ` ${word}`
      isEmpty = false
    }
    lines.push(line.trimEnd())
  }
  return lines
}
