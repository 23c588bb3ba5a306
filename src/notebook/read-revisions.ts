import { entriesOf, entryPlace, itemsOf } from './entry-parts.ts'
import { error } from './reading.ts'
import { refuseOtherKeys } from './refuse-other-keys.ts'
import { readDate, readText, type TitleValue } from './title-values.ts'
import type { Entry, Revision } from './types.ts'

const rule = 'front-matter-value'
const keys = ['mark', 'date', 'note'] as const
const known = {
  keys,
  rule: 'front-matter-key',
  of: 'A row of `revisions`',
  help: 'It has `mark`, `date` and `note`',
} as const

/** Returns the revision table. Refuses a row without a mark, a day or a reason, and a mark given twice. */
export function readRevisions(value: TitleValue): readonly Revision[] {
  const revisions: Revision[] = []
  for (const item of itemsOf(value.entry, { rule, ...value }) ?? []) {
    const revision = readRevision({ ...value, entry: item })
    if (revision === undefined) continue
    if (revisions.some(({ mark }) => mark === revision.mark)) {
      const says = `The revision \`${revision.mark}\` is in the table twice`
      error(value.reading, rule, { place: entryPlace(item), says, help: 'Each revision has one row' })
    }
    revisions.push(revision)
  }
  return revisions
}

function readRevision(value: TitleValue): Revision | undefined {
  const entries = entriesOf(value.entry, { rule, ...value })
  if (entries === undefined) return undefined
  refuseOtherKeys(entries, { ...known, reading: value.reading })
  const part = (key: string): Entry | undefined => entries.find(entry => entry.key.text === key)?.value
  const text = (key: string): string => readPart(part(key), { ...value, key })
  const [mark, date, note] = [text('mark'), readDay(part('date'), value), text('note')]
  for (const [index, given] of [mark, part('date') && 'given', note].entries()) {
    if (given) continue
    const says = `A row of \`revisions\` has no \`${keys[index]}\``
    const help = 'Write `{ mark: A, date: 2026-01-20, note: first issue }`: each letter has its day and its reason'
    error(value.reading, rule, { place: entryPlace(value.entry), says, help })
  }
  return mark === '' ? undefined : { mark, date, note }
}

const readPart = (entry: Entry | undefined, value: TitleValue): string =>
  entry === undefined ? '' : readText({ ...value, entry })

const readDay = (entry: Entry | undefined, value: TitleValue): string =>
  entry === undefined ? '' : readDate({ ...value, key: 'date', entry })
