import { nearestName } from '../diagnostic/nearest-name.ts'
import { entriesOf, itemsOf, scalarOf } from './entry-parts.ts'
import { readNames } from './read-names.ts'
import { error } from './reading.ts'
import type { TitleValue } from './title-values.ts'
import type { Entry, Keyed, Requirement, Written } from './types.ts'

const rule = 'front-matter-value'
const keys = ['what', 'value', 'shown by'] as const
const example = 'Write `{ what: people sheltered, value: brief.people, shown by: [air.enough] }`'

/** Returns the design basis, line by line. Refuses a line that does not say what is asked, or that has neither a value nor a check. */
export function readDesignBasis(value: TitleValue): readonly Requirement[] {
  return (itemsOf(value.entry, { rule, ...value }) ?? []).flatMap(entry => readRequirement({ ...value, entry }))
}

function readRequirement(value: TitleValue): Requirement[] {
  const entries = entriesOf(value.entry, { rule, ...value })
  if (entries === undefined) return []
  refuseOtherKeys(entries, value)
  const part = (key: (typeof keys)[number]): Entry | undefined => entries.find(entry => entry.key.text === key)?.value
  const what = textOf(part('what'), value)
  const of = textOf(part('value'), value)
  const shown = part('shown by')
  const shownBy = shown ? readNames({ ...value, key: 'shown by', entry: shown }) : []
  const at = entries[0]?.key.place
  if (what && (of || shownBy.length > 0)) return [{ what, ...(of ? { value: of } : {}), shownBy }]
  if (at === undefined) return []
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

function refuseOtherKeys(entries: readonly Keyed[], { reading }: TitleValue): void {
  for (const { key } of entries) {
    if (keys.some(known => known === key.text)) continue
    const near = nearestName(key.text, keys)
    const says = `A line of \`design basis\` has no key \`${key.text}\``
    const help = near === undefined ? example : `Write \`${near}\``
    error(reading, 'front-matter-key', { place: key.place, says, help })
  }
}
