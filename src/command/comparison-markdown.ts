import type { Change } from '../comparison/change-types.ts'
import type { CheckMove, Comparison } from '../comparison/types.ts'
import { ratioText, standingOf, verdictText } from './check-words.ts'
import {
  type ComparedAbout,
  changeName,
  changeText,
  restatedText,
  shareText,
  stepText,
  valueText,
} from './comparison-words.ts'
import { plural } from './count-of.ts'
import { byBlock, ranges } from './line-numbers.ts'
import { escaped, folded, table } from './markdown-parts.ts'
import { movedBy, type Names, namesOf, ratioEnds, resultEnds } from './moved-by-words.ts'

/** The comparison as Markdown, to be put under a request for review. */
export function comparisonMarkdown(comparison: Comparison, about: ComparedAbout): string {
  const names = namesOf(comparison)
  const parts = [
    `## ${escaped(about.title)}: what changed`,
    `${sideText(about.old)} → ${sideText(about.now)}`,
    about.editions.map(says => `- ${escaped(says)}`).join('\n'),
    summaryOf(comparison),
    changesOf(comparison),
    turnedOf(comparison, names),
    checksOf(comparison, names),
    resultsOf(comparison, names),
    recheckOf(comparison, names),
    restatedOf(comparison),
  ]
  return parts.filter(Boolean).join('\n\n')
}

const sideText = ({ label, revision }: ComparedAbout['old']): string =>
  `${escaped(label)}${revision ? ` (revision ${escaped(revision)})` : ''}`

function summaryOf({ changes, checks, recheck, errors }: Comparison): string {
  const worse = checks.filter(isWorse)
  const standing = recheck.differ.filter(({ kind }) => kind !== 'removed').length
  const turned =
    worse.length > 0
      ? `**${plural(worse.length, 'check')} turned to not satisfied**`
      : 'no check turned to not satisfied'
  const faulty = errors.now > 0 ? `**${plural(errors.now, 'error')}**; ` : ''
  return `${faulty}${plural(changes.filter(({ bears }) => bears).length, 'change')} of numbers or formulas; ${turned}; ${standingOf(checks)}; ${standing} of ${recheck.lines} lines differ.`
}

const isWorse = ({ turn, now }: CheckMove): boolean =>
  turn === 'turned to not satisfied' || (turn === 'added' && now?.satisfied === false)

function changesOf({ changes }: Comparison): string {
  if (changes.length === 0) return 'Nothing changed in meaning.'
  return `### Changed\n\n${table(['what', 'change', 'by'], changes.flatMap(changeRows))}`
}

function changeRows(change: Change): string[][] {
  const { what, fields, old, now } = change
  const name = what === 'title' ? `title block: ${escaped(change.key)}` : escaped(changeName(change))
  const said = old === now && fields.length > 0 ? '' : escaped(changeText(change))
  const rows = fields.map(field => [
    name,
    `${escaped(field.field)}: ${escaped(field.old) || 'nothing'} → ${escaped(field.now) || 'nothing'}`,
    '',
  ])
  return said ? [[name, said, stepText(change)], ...rows] : rows
}

function turnedOf({ checks, verdicts }: Comparison, names: Names): string {
  const turned = checks.filter(check => check.turn.startsWith('turned') || isWorse(check))
  const items = [
    ...turned.map(check => {
      const [old, now] = ratioText(check)
      const word = check.now?.satisfied ? 'satisfied now' : '**not satisfied**'
      const by = movedBy(check.moved, { names, ends: ratioEnds(check) }).join(', ')
      return `- ${word}: ${check.number} ${escaped(`${check.block}: ${check.says}`)}, ratio ${old} → ${now}${by ? `, by ${escaped(by)}` : ''}`
    }),
    ...verdicts.map(verdict => `- ${escaped(verdictText(verdict))}`),
  ]
  return items.length === 0 ? '' : `### Turned\n\n${items.join('\n')}`
}

function checksOf({ checks }: Comparison, names: Names): string {
  const rows = checks.flatMap(check => {
    const [old, now] = ratioText(check)
    if (!check.differs || old === now) return []
    const by = movedBy(check.moved, { names, ends: ratioEnds(check) }).join(', ')
    return [[check.number, escaped(`${check.block}: ${check.says}`), old, now, escaped(by)]]
  })
  if (rows.length === 0) return ''
  return `### Ratios of checks\n\n${table(['step', 'check', 'old', 'new', 'moved by'], rows)}`
}

function resultsOf({ results, below, threshold }: Comparison, names: Names): string {
  if (results.length + below === 0) return ''
  const rows = results.map(result => [
    result.number,
    escaped(result.key),
    result.old ? valueText(result.old) : '–',
    result.now ? valueText(result.now) : '–',
    result.share === undefined ? '' : shareText(result.share),
    escaped(movedBy(result.moved, { names, ends: resultEnds(result) }).join(', ')),
  ])
  const percent = Number((threshold * 100).toPrecision(6))
  const head = `${plural(results.length, 'result')} moved by ${percent} percent or more${below > 0 ? `, ${below} by less` : ''}`
  return folded(head, rows.length > 0 ? table(['step', 'value', 'old', 'new', 'by', 'moved by'], rows) : '')
}

function recheckOf({ recheck, changes }: Comparison, names: Names): string {
  const { lines, differ, same, cannot, unexplained } = recheck
  const standing = differ.filter(({ kind }) => kind !== 'removed')
  const said = `${standing.length} of ${lines} lines differ, ${same.length} more rest on a change and print the same, ${cannot} rest on nothing that changed and cannot have moved.`
  const rows = changes.flatMap(({ id }) => {
    const own = differ.filter(line => line.changes.includes(id))
    const blocks = [...byBlock(own)].map(([block, some]) => {
      const numbers = some.filter(({ kind }) => kind !== 'removed').map(({ number }) => number)
      return `${escaped(block)} ${numbers.length > 0 ? ranges(numbers) : '(gone)'}`
    })
    return own.length === 0 ? [] : [[escaped(names(id)), String(own.length), blocks.join('; ')]]
  })
  const strange =
    unexplained.length > 0 ? `\n\nWithout a cause that could be found, please report it: ${unexplained.join(', ')}` : ''
  const body =
    rows.length > 0 ? `\n\n${folded('which lines, by change', table(['change', 'lines', 'where'], rows))}` : ''
  return `### To check again\n\n${said}${strange}${body}`
}

function restatedOf(comparison: Comparison): string {
  const said = restatedText(comparison)
  return said.length === 0 ? '' : `### No change of meaning\n\n${said.map(text => `- ${escaped(text)}`).join('\n')}`
}
