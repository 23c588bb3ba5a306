import { nearestName } from '../diagnostic/nearest-name.ts'
import { scalarOf } from './entry-parts.ts'
import { readRange } from './read-range.ts'
import { error, type Reading } from './reading.ts'
import { refuseOtherKeys } from './refuse-other-keys.ts'
import type { Assumption, Entry, Keyed, Written } from './types.ts'

const texts = ['basis', 'closes', 'measured', 'evidence', 'symbol'] as const
const known = ['value', 'basis', 'range', 'status', 'closes', 'measured', 'evidence', 'symbol'] as const
const keysHelp = `Its keys are ${known.map(name => `\`${name}\``).join(', ')}`
const statuses = ['confirmed', 'hold'] as const

/** Returns one row of the register, or nothing where it has no value. `cover: 1.8 m` is short for a value alone. */
export function readAssumption({ key, value }: Keyed, reading: Reading): Assumption | undefined {
  const keys = value.kind === 'map' ? value.entries : [{ key, value }]
  const part = (name: string): Entry | undefined =>
    value.kind === 'map' ? keys.find(entry => entry.key.text === name)?.value : name === 'value' ? value : undefined
  if (value.kind === 'map')
    refuseOtherKeys(value.entries, { keys: known, rule: 'key-unknown', of: 'An assumption', help: keysHelp, reading })
  const text = (name: string): Written | undefined => {
    const entry = part(name)
    const written = entry && scalarOf(entry, { rule: 'value-kind', key: name, reading })
    return written === undefined || written.text === '' ? undefined : written
  }
  const range = readRange(text('range'), reading)
  const status = readStatus(text('status'), reading)
  const rest = Object.fromEntries(texts.map(name => [name, text(name)] as const).filter(([, written]) => written))
  const given = readValue(value, { name: key, part: part('value'), reading })
  if (given === undefined) return undefined
  return { name: key, value: given, status, ...rest, ...(range && { range }) }
}

function readValue(
  whole: Entry,
  { name, part, reading }: { name: Written; part: Entry | undefined; reading: Reading },
): Written | undefined {
  const written = part && scalarOf(part, { rule: 'value-kind', key: name.text, reading })
  if (written !== undefined && written.text !== '') return written
  if ((part !== undefined && part.kind !== 'scalar') || isMisspelled('value', whole)) return undefined
  const help = `Write \`${name.text}: 3.2 m\`, or \`value: 3.2 m\` under it`
  error(reading, 'key-missing', { place: name.place, says: `The assumption \`${name.text}\` has no value`, help })
  return undefined
}

/** Whether one of the keys is nearly this one: then that has been said, and is the cause of its absence. */
const isMisspelled = (wanted: string, whole: Entry): boolean =>
  whole.kind === 'map' &&
  whole.entries.some(({ key }) => key.text !== wanted && nearestName(key.text, known) === wanted)

function readStatus(written: Written | undefined, reading: Reading): Assumption['status'] {
  const status = statuses.find(each => each === written?.text)
  if (status !== undefined || written === undefined) return status ?? 'confirmed'
  const near = nearestName(written.text, statuses)
  const help =
    near === undefined ? 'Write `confirmed`, or `hold` for what is still to be confirmed' : `Write \`${near}\``
  error(reading, 'choice-unknown', { place: written.place, says: `\`${written.text}\` is not a status`, help })
  // What is not known to be confirmed is to be confirmed.
  return 'hold'
}
