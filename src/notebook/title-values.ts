import { nearestName } from '../diagnostic/nearest-name.ts'
import { entriesOf, entryPlace, itemsOf, scalarOf } from './entry-parts.ts'
import { error, type Reading } from './reading.ts'
import { isReferenceKey, referenceKeyHelp } from './reference-key.ts'
import type { Entry, Written } from './types.ts'

const rule = 'front-matter-value'

/** One value of the title block: its key as the author wrote it, and where to report. */
export interface TitleValue {
  readonly key: string
  readonly entry: Entry
  readonly reading: Reading
}

/** Returns a text; `''` where it is empty or refused. */
export function readText({ key, entry, reading }: TitleValue): string {
  return scalarOf(entry, { rule, key, reading })?.text.trim() ?? ''
}

/** Returns one of the words, or nothing. Refuses any other, and names the nearest. */
export function readWord<Word extends string>(value: TitleValue, words: readonly Word[]): Word | undefined {
  const written = scalarOf(value.entry, { rule, ...value })
  if (written === undefined || written.text === '') return undefined
  const word = words.find(each => each === written.text)
  if (word !== undefined) return word
  const near = nearestName(written.text, words)
  const list = words.map(each => `\`${each}\``).join(', ')
  refuse(value, written, `\`${value.key}\` is one of ${list}`, near === undefined ? undefined : `Write \`${near}\``)
  return undefined
}

/** Returns a day as `YYYY-MM-DD`, or `''`. Refuses other forms and days that the calendar does not have. */
export function readDate(value: TitleValue): string {
  const written = scalarOf(value.entry, { rule, ...value })
  if (written === undefined || written.text === '') return ''
  if (isDay(written.text)) return written.text
  refuse(value, written, `\`${written.text}\` is not a day of the calendar`, 'Write year, month and day: `2026-03-02`')
  return ''
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}

/** Returns a whole number between two others, or nothing. */
export function readWhole(value: TitleValue, { from, to }: { from: number; to: number }): number | undefined {
  const written = scalarOf(value.entry, { rule, ...value })
  if (written === undefined || written.text === '') return undefined
  const number = /^\d{1,3}$/.test(written.text) ? Number(written.text) : Number.NaN
  if (number >= from && number <= to) return number
  refuse(value, written, `\`${value.key}\` is a whole number from ${from} to ${to}`)
  return undefined
}

/** Returns a language as BCP 47 tags it, or nothing. */
export function readLanguage(value: TitleValue): string | undefined {
  const written = scalarOf(value.entry, { rule, ...value })
  if (written === undefined || written.text === '') return undefined
  if (/^[A-Za-z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/.test(written.text)) return written.text
  refuse(value, written, `\`${written.text}\` is not the tag of a language`, 'Write for instance `en`, `en-IN` or `de`')
  return undefined
}

/** Returns a list of texts. */
export function readTexts(value: TitleValue): readonly string[] {
  const items = itemsOf(value.entry, { rule, ...value }) ?? []
  return items.map(entry => readText({ ...value, entry })).filter(text => text !== '')
}

/** Returns texts by key: the author's own references. Refuses keys that `:cite[...]` could not name. */
export function readReferences(value: TitleValue): ReadonlyMap<string, string> {
  const references = new Map<string, string>()
  for (const { key, value: entry } of entriesOf(value.entry, { rule, ...value }) ?? []) {
    const text = readText({ ...value, key: key.text, entry })
    if (!isReferenceKey(key.text)) refuse(value, key, `\`${key.text}\` cannot be cited`, referenceKeyHelp)
    else if (text !== '') references.set(key.text, text)
    else if (entry.kind === 'scalar') {
      error(value.reading, rule, { place: entryPlace(entry), says: `The reference \`${key.text}\` has no text` })
    }
  }
  return references
}

function refuse({ reading }: TitleValue, { place }: Written, says: string, help?: string): void {
  error(reading, rule, { place, says, ...(help !== undefined && { help }) })
}
