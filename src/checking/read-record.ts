import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument, type YAMLMap } from 'yaml'
import { isHeadLine, remarksAround, remarksBefore, remarksBehind, remarksIn } from './own-remarks.ts'
import { type Reading, readComment, readTick } from './read-entry.ts'
import { aboveAll, type BlockRecord, type CheckingRecord } from './record.ts'
import { mergeFault, type RecordFault, yamlFault } from './yaml-faults.ts'

/**
 * Reads a checking record. What it cannot read it reports with its line, and leaves the rest aside: a record with faults is not to be
 * written over. Text stays text (no schema), aliases and merge keys are refused. Remarks behind `#` are kept with what they stand at.
 */
export function readRecord(text: string): { readonly record: CheckingRecord; readonly faults: readonly RecordFault[] } {
  const record = new Map<string, BlockRecord>()
  const merged = mergeFault(text)
  if (merged) return { record, faults: [merged] }
  const lines = new LineCounter()
  const document = parseDocument(text, {
    schema: 'failsafe',
    lineCounter: lines,
    prettyErrors: false,
    maxAliasCount: 0,
  } as never)
  const lineAt = (offset: number): number => lines.linePos(offset).line
  const broken = yamlFault(text, document.errors, lineAt)
  if (broken) return { record, faults: [broken] }
  const reading: Reading = { lineAt, faults: [] }
  const { contents } = document
  if (contents !== null && !isMap(contents))
    return {
      record,
      faults: [
        {
          line: lineAt((contents as Node).range?.[0] ?? 0),
          says: 'The record is not a list of blocks with their ticks',
        },
      ],
    }
  const pairs = (contents?.items ?? []) as Pair<Node, Node | null>[]
  keepRemarks(record, aboveAll, [
    ...remarksAround(document),
    ...remarksBefore(contents),
    ...remarksBehind(contents),
    ...remarksBefore(pairs[0]?.key),
  ])
  for (const [index, pair] of pairs.entries()) readBlock(pair, { reading, record, isFirst: index === 0 })
  return { record, faults: reading.faults }
}

function keepRemarks(record: Map<string, BlockRecord>, name: string, found: readonly string[]): void {
  const remarks = found.filter(line => !isHeadLine(line))
  if (remarks.length > 0) record.set(name, { ...(record.get(name) ?? { ticks: [], comments: [] }), remarks })
}

function readBlock(
  { key, value }: Pair<Node, Node | null>,
  { reading, record, isFirst }: { reading: Reading; record: Map<string, BlockRecord>; isFirst: boolean },
): unknown {
  const fault = (node: Node | null, says: string): number =>
    reading.faults.push({ line: reading.lineAt(node?.range?.[0] ?? 0), says })
  if (!isScalar(key) || typeof key.value !== 'string' || key.value === '')
    return fault(key, 'The name of a block is a word')
  const empty = value === null || (isScalar(value) && value.value === '')
  if (!empty && !isSeq(value)) return fault(value, `\`${key.value}\` holds a list of ticks and comments`)
  const ticks: BlockRecord['ticks'][number][] = []
  const comments: BlockRecord['comments'][number][] = []
  const items = empty ? [] : (value as unknown as { items: Node[] }).items
  // What stands before the first entry is kept at the list.
  const first = items[0]
  if (first) first.commentBefore = [...remarksBefore(value), ...remarksBefore(first)].join('\n')
  for (const item of items) {
    if (!isMap(item)) fault(item, 'An entry is a tick (`step`) or a comment (`comment`)')
    else if (item.has('comment')) push(comments, readComment(reading, item), item)
    else push(ticks, readTick(reading, item), item)
  }
  record.set(key.value, { ticks, comments })
  return keepRemarks(record, key.value, [
    ...(isFirst ? [] : remarksBefore(key)),
    ...(first ? [] : remarksBefore(value)),
    ...remarksBehind(value),
  ])
}

function push<Entry extends object>(list: Entry[], entry: Entry | undefined, item: YAMLMap): void {
  const remarks = remarksIn(item)
  if (entry) list.push(remarks.length > 0 ? { ...entry, remarks } : entry)
}
