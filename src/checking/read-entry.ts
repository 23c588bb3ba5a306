import { isMap, isScalar, type Node, type YAMLMap } from 'yaml'
import { type Comment, isDay, type Signed, type Tick } from './record.ts'
import { type StepPrint, vouched } from './vouched.ts'
import type { RecordFault } from './yaml-faults.ts'

/** What reading a record has found wrong so far. */
export interface Reading {
  readonly lineAt: (offset: number) => number
  readonly faults: RecordFault[]
}

function fault({ lineAt, faults }: Reading, node: Node, says: string): undefined {
  faults.push({ line: lineAt(node.range?.[0] ?? 0), says })
  return undefined
}

/** The text of each wanted key, or nothing and a report where one is missing, not a text, or not known. */
function texts<K extends string>(
  reading: Reading,
  map: YAMLMap,
  keys: readonly K[],
  more: readonly string[] = [],
): Record<K, string> | undefined {
  const strange = map.items
    .map(({ key }) => (isScalar(key) ? String(key.value) : '?'))
    .find(key => ![...keys, ...more].includes(key))
  if (strange !== undefined)
    return fault(
      reading,
      map,
      `Nothing is kept under \`${strange}\` here; the keys are ${keys.map(key => `\`${key}\``).join(', ')}`,
    )
  const found: Partial<Record<K, string>> = {}
  for (const key of keys) {
    const value = map.get(key)
    if (typeof value !== 'string' || value === '') return fault(reading, map, `\`${key}\` is missing here`)
    found[key] = value
  }
  return found as Record<K, string>
}

/** The texts of keys that may be left out; nothing, and a report, where one is no text. */
function optional<K extends string>(
  reading: Reading,
  map: YAMLMap,
  keys: readonly K[],
): Partial<Record<K, string>> | undefined {
  const found: Partial<Record<K, string>> = {}
  for (const key of keys) {
    const value = map.get(key)
    if (value !== undefined && (typeof value !== 'string' || value === ''))
      return fault(reading, map, `\`${key}\` says nothing here`)
    if (value !== undefined) found[key] = value
  }
  return found
}

/** A tick; nothing, and a report, where it is none. */
export function readTick(reading: Reading, map: YAMLMap): Tick | undefined {
  const found = texts(reading, map, ['step', 'by', 'on', 'as', 'of'], ['row', 'from'])
  const more = found && optional(reading, map, ['row', 'from'])
  if (!more || !signedWell(reading, map, found)) return undefined
  const of = printOf(found.of)
  if (of) return { ...found, ...more, of }
  return fault(
    reading,
    map,
    '`of` is the fingerprint that `undercroft tick` writes: five times eight hexadecimal digits',
  )
}

/** The fingerprint in its parts. */
function printOf(text: string): StepPrint | undefined {
  const parts = text.split(' ')
  if (parts.length !== vouched.length || parts.some(part => !/^[0-9a-f]{8}$/.test(part))) return undefined
  return Object.fromEntries(vouched.map((name, index) => [name, parts[index] ?? ''])) as StepPrint
}

/** A comment; nothing, and a report, where it is none. */
export function readComment(reading: Reading, map: YAMLMap): Comment | undefined {
  const found = texts(reading, map, ['comment', 'by', 'on', 'says'], ['row', 'settled'])
  const more = found && optional(reading, map, ['row'])
  if (!more || !signedWell(reading, map, found)) return undefined
  const { comment, ...rest } = found
  const read = { step: comment, ...more, ...rest }
  const settled = map.get('settled')
  if (settled === undefined) return read
  if (!isMap(settled)) return fault(reading, map, '`settled` holds `by`, `on` and `says`')
  const answer = texts(reading, settled as YAMLMap, ['by', 'on', 'says'])
  return answer && signedWell(reading, map, answer) ? { ...read, settled: answer } : undefined
}

function signedWell(reading: Reading, map: YAMLMap, { on }: Signed): boolean {
  if (isDay(on)) return true
  fault(reading, map, `\`on\` is a date as 2026-03-04, not \`${on}\``)
  return false
}
