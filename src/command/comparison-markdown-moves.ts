import type { CheckMove, Comparison } from '../comparison/types.ts'
import { ratioText, verdictText } from './check-words.ts'
import { shareText, valueText } from './comparison-words.ts'
import { plural } from './count-of.ts'
import { escaped, folded, table } from './markdown-parts.ts'
import { movedBy, type Names, ratioEnds, resultEnds } from './moved-by-words.ts'

/** Whether a check is not satisfied now that was satisfied before, or that was not there. */
export const isWorse = ({ turn, now }: CheckMove): boolean =>
  turn === 'turned to not satisfied' || (turn === 'added' && now?.satisfied === false)

/** Checks, limits and methods that turned. */
export function turnedMarkdown({ checks, verdicts }: Comparison, names: Names): string {
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

/** Ratios that moved. */
export function ratiosMarkdown({ checks }: Comparison, names: Names): string {
  const rows = checks.flatMap(check => {
    const [old, now] = ratioText(check)
    if (!check.differs || old === now) return []
    const by = movedBy(check.moved, { names, ends: ratioEnds(check) }).join(', ')
    return [[check.number, escaped(`${check.block}: ${check.says}`), old, now, escaped(by)]]
  })
  if (rows.length === 0) return ''
  return `### Ratios of checks\n\n${table(['step', 'check', 'old', 'new', 'moved by'], rows)}`
}

/** Results that moved by so much or more. */
export function resultsMarkdown({ results, below, threshold }: Comparison, names: Names): string {
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
