import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument, type YAMLMap } from 'yaml'
import type { BlockRecord, CheckingRecord, Comment, Signed, Tick } from './record.ts'
import { type StepPrint, vouched } from './step-print.ts'

/** What is wrong with a record, and the line it stands on. */
export interface RecordFault {
  readonly line: number
  readonly says: string
}

interface Reading {
  readonly lines: LineCounter
  readonly faults: RecordFault[]
}

/**
 * Reads a checking record. What it cannot read it reports with its line, and leaves the rest aside: a record with faults is not to be
 * written over. Text stays text (no schema), aliases and merge keys are refused.
 */
export function readRecord(text: string): { readonly record: CheckingRecord; readonly faults: readonly RecordFault[] } {
  const lines = new LineCounter()
  const document = parseDocument(text, {
    schema: 'failsafe',
    lineCounter: lines,
    prettyErrors: false,
    maxAliasCount: 0,
  } as never)
  const reading: Reading = { lines, faults: [] }
  for (const error of document.errors)
    reading.faults.push({ line: lines.linePos(error.pos[0]).line, says: sentence(error.message) })
  const record = new Map<string, BlockRecord>()
  const { contents } = document
  if (reading.faults.length > 0 || contents === null) return { record, faults: reading.faults }
  if (!isMap(contents)) fault(reading, contents as Node, 'The record is not a list of blocks with their ticks')
  else for (const pair of contents.items) readBlock(pair as Pair<Node, Node | null>, { reading, record })
  return { record, faults: reading.faults }
}

const sentence = (message: string): string => message.replace(/\s+/g, ' ').trim()

function fault({ lines, faults }: Reading, node: Node | null, says: string): undefined {
  faults.push({ line: lines.linePos(node?.range?.[0] ?? 0).line, says })
  return undefined
}

function readBlock(
  { key, value }: Pair<Node, Node | null>,
  about: { reading: Reading; record: Map<string, BlockRecord> },
): undefined {
  const { reading, record } = about
  if (!isScalar(key) || typeof key.value !== 'string') return fault(reading, key, 'The name of a block is a word')
  const empty = value === null || (isScalar(value) && value.value === '')
  if (!empty && !isSeq(value)) return fault(reading, value, `\`${key.value}\` holds a list of ticks and comments`)
  const ticks: Tick[] = []
  const comments: Comment[] = []
  for (const item of empty ? [] : (value as { items: Node[] }).items) {
    if (!isMap(item)) fault(reading, item, 'An entry is a tick (`step`) or a comment (`comment`)')
    else if (item.has('comment')) push(comments, readComment(reading, item))
    else push(ticks, readTick(reading, item))
  }
  record.set(key.value, { ticks, comments })
}

const push = <T>(list: T[], item: T | undefined): void => {
  if (item) list.push(item)
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

function readTick(reading: Reading, map: YAMLMap): Tick | undefined {
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

function readComment(reading: Reading, map: YAMLMap): Comment | undefined {
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
  if (/^\d{4}-\d{2}-\d{2}$/.test(on) && !Number.isNaN(Date.parse(on))) return true
  fault(reading, map, `\`on\` is a date as 2026-03-04, not \`${on}\``)
  return false
}
