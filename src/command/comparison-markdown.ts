import type { Comparison } from '../comparison/types.ts'
import { standingOf } from './check-words.ts'
import { changesMarkdown } from './comparison-markdown-changes.ts'
import { isWorse, ratiosMarkdown, resultsMarkdown, turnedMarkdown } from './comparison-markdown-moves.ts'
import { type ComparedAbout, restatedText } from './comparison-words.ts'
import { plural } from './count-of.ts'
import { byBlock, ranges } from './line-numbers.ts'
import { escaped, folded, table } from './markdown-parts.ts'
import { type Names, namesOf } from './moved-by-words.ts'

/** The comparison as Markdown, to be put under a request for review. */
export function comparisonMarkdown(comparison: Comparison, about: ComparedAbout): string {
  const names = namesOf(comparison)
  const parts = [
    `## ${escaped(about.title)}: what changed`,
    `${sideText(about.old)} → ${sideText(about.now)}`,
    about.editions.map(says => `- ${escaped(says)}`).join('\n'),
    summaryOf(comparison),
    changesMarkdown(comparison),
    turnedMarkdown(comparison, names),
    ratiosMarkdown(comparison, names),
    resultsMarkdown(comparison, names),
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
