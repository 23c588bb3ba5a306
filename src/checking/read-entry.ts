import { isMap, isScalar, type Node, type YAMLMap } from 'yaml'
import { type Comment, isDay, type Signed, type Tick } from './record.ts'
import { type StepPrint, vouched } from './step-print.ts'
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

/** A tick; nothing, and a report, where it is none. */
export function readTick(reading: Reading, map: YAMLMap): Tick | undefined {
  const found = texts(reading, map, ['step', 'by', 'on', 'as', 'of'])
  if (!found || !signedWell(reading, map, found)) return undefined
  const parts = found.of.split(' ')
  if (parts.length !== vouched.length || parts.some(part => !/^[0-9a-f]{8}$/.test(part)))
    return fault(
      reading,
      map,
      '`of` is the fingerprint that `undercroft tick` writes: four times eight hexadecimal digits',
    )
  const of = Object.fromEntries(vouched.map((part, index) => [part, parts[index] ?? ''])) as unknown as StepPrint
  return { ...found, of }
}

/** A comment; nothing, and a report, where it is none. */
export function readComment(reading: Reading, map: YAMLMap): Comment | undefined {
  const found = texts(reading, map, ['comment', 'by', 'on', 'says'], ['settled'])
  if (!found || !signedWell(reading, map, found)) return undefined
  const { comment, ...rest } = found
  const settled = map.get('settled')
  if (settled === undefined) return { step: comment, ...rest }
  if (!isMap(settled)) return fault(reading, map, '`settled` holds `by`, `on` and `says`')
  const answer = texts(reading, settled as YAMLMap, ['by', 'on', 'says'])
  return answer && signedWell(reading, map, answer) ? { step: comment, ...rest, settled: answer } : undefined
}

function signedWell(reading: Reading, map: YAMLMap, { on }: Signed): boolean {
  if (isDay(on)) return true
  fault(reading, map, `\`on\` is a date as 2026-03-04, not \`${on}\``)
  return false
}
