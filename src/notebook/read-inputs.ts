import { afterComma, isCutOff } from './cut-off.ts'
import { entryPlace } from './entry-parts.ts'
import type { InnerText } from './inner-text.ts'
import { readYaml } from './read-yaml.ts'
import { error, type Reading } from './reading.ts'
import type { Entry, Keyed, Written } from './types.ts'

/**
 * Returns the keys of a `calc` block with their values as written; which keys the module has is not known here.
 * Refuses keys without a value, at any depth.
 */
export function readInputs(inner: InnerText, reading: Reading): { inputs: readonly Keyed[]; whole: boolean } {
  const { entries, whole } = readYaml(inner, reading)
  const inputs = entries.filter(({ key, value }) => hasValue(value, { key, reading }))
  return { inputs, whole: whole && inputs.length === entries.length }
}

function hasValue(entry: Entry, { key, reading }: { key: Written; reading: Reading }): boolean {
  if (entry.kind === 'list') return entry.items.every(item => hasValue(item, { key, reading }))
  if (entry.kind === 'map') return entry.entries.every(each => hasValue(each.value, { key: each.key, reading }))
  if (entry.written.text !== '') return true
  const help = isCutOff(key, entry) ? afterComma : withValue(key.text)
  error(reading, 'value-kind', { place: entryPlace(entry), says: `\`${key.text}\` has no value`, help })
  return false
}

function withValue(key: string): string {
  const joined = /^(\w+):(?=\S)/.exec(key)
  return joined === null ? 'Give it one, or leave the key out' : `Write \`${joined[1]}: \` with a blank after the colon`
}
