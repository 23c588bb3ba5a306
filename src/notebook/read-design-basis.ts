import { entriesOf, entryPlace, itemsOf, scalarOf } from './entry-parts.ts'
import { readNames } from './read-names.ts'
import { error } from './reading.ts'
import { refuseOtherKeys } from './refuse-other-keys.ts'
import type { TitleValue } from './title-values.ts'
import type { Entry, Requirement, Written } from './types.ts'

const rule = 'front-matter-value'
const keys = ['what', 'value', 'shown by'] as const
const example = 'Write `{ what: people sheltered, value: brief.people, shown by: [air.enough] }`'
const known = { keys, rule: 'front-matter-key', of: 'A line of `design basis`', help: example } as const

/** Returns the design basis, line by line. Refuses a line that does not say what is asked, or that has neither a value nor a check. */
export function readDesignBasis(value: TitleValue): readonly Requirement[] {
  return (itemsOf(value.entry, { rule, ...value }) ?? []).flatMap(entry => readRequirement({ ...value, entry }))
}

function readRequirement(value: TitleValue): Requirement[] {
  const entries = entriesOf(value.entry, { rule, ...value })
  if (entries === undefined) return []
  refuseOtherKeys(entries, { ...known, reading: value.reading })
  const part = (key: (typeof keys)[number]): Entry | undefined => entries.find(entry => entry.key.text === key)?.value
  const text = (key: 'what' | 'value'): Written | undefined => textOf(part(key), { ...value, key })
  const [what, of] = [text('what'), text('value')]
  const shown = part('shown by')
  const shownBy = shown ? readNames({ ...value, key: 'shown by', entry: shown }) : []
  const at = entries[0]?.key.place ?? entryPlace(value.entry)
  if (what && (of || shownBy.length > 0)) return [{ what, ...(of ? { value: of } : {}), shownBy }]
  const isRefused = [part('what'), part('value')].some(entry => entry !== undefined && entry.kind !== 'scalar')
  if (isRefused) return []
  const says = what
    ? `\`${what.text}\` has no value and no check`
    : 'A line of `design basis` does not say `what` is asked'
  error(value.reading, rule, { place: at, says, help: example })
  return []
}

function textOf(entry: Entry | undefined, value: TitleValue): Written | undefined {
  const written = entry && scalarOf(entry, { rule, ...value })
  return written?.text.trim() ? { ...written, text: written.text.trim() } : undefined
}
