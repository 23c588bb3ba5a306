import type { Comparison } from '../comparison/types.ts'
import { changesOf } from './comparison-changes-text.ts'
import { named, wrapped } from './comparison-lines.ts'
import { checksOf, resultsOf, turnedOf } from './comparison-moves-text.ts'
import { type ComparedAbout, plainLine, restatedText } from './comparison-words.ts'
import { plural } from './count-of.ts'
import { byBlock, ranges } from './line-numbers.ts'
import { type Names, namesOf } from './moved-by-words.ts'

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

function headOf({ title, old, now, editions }: ComparedAbout): string[] {
  const side = (name: string, { label, revision }: ComparedAbout['old']): string =>
    `${name}  ${plainLine(label)}${revision ? `, revision ${plainLine(revision)}` : ''}`
  return [plainLine(title), side('old', old), side('new', now), ...wrapped(editions.map(plainLine))]
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
