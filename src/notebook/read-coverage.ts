import { entriesOf, scalarOf } from './entry-parts.ts'
import { readNames } from './read-names.ts'
import { error } from './reading.ts'
import type { TitleValue } from './title-values.ts'
import type { CoverageEntry, Keyed } from './types.ts'

const rule = 'front-matter-value'
const help = 'Write why it does not apply, or `{ by: block }` with a block of this notebook that answers it'

/** Returns what the author says of lines of the coverage ledger. Refuses one that gives neither a reason nor a block. */
export function readCoverage(value: TitleValue): readonly CoverageEntry[] {
  const entries = entriesOf(value.entry, { rule, ...value }) ?? []
  return entries.flatMap(entry => readEntry(entry, value))
}

function readEntry({ key, value: entry }: Keyed, { reading }: TitleValue): CoverageEntry[] {
  if (entry.kind !== 'map') {
    const reason = scalarOf(entry, { rule, key: key.text, reading })?.text.trim()
    if (reason) return [{ key, by: [], reason }]
    if (reason === '') error(reading, rule, { place: key.place, says: `\`${key.text}\` has no reason`, help })
    return []
  }
  const by = entry.entries.find(each => each.key.text === 'by')
  const other = entry.entries.find(each => each !== by)
  if (other)
    error(reading, 'front-matter-key', {
      place: other.key.place,
      says: `\`${key.text}\` has no key \`${other.key.text}\``,
      help,
    })
  const names = by ? readNames({ key: 'by', entry: by.value, reading }) : []
  if (names.length > 0) return [{ key, by: names, reason: '' }]
  if (!other) error(reading, rule, { place: key.place, says: `\`${key.text}\` names no block`, help })
  return []
}
