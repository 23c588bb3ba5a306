import { isMap, isScalar, isSeq, type Node, type Pair, parseDocument, type Scalar } from 'yaml'
import { checkYamlLimits } from './check-yaml-limits.ts'
import { checkYamlSound } from './check-yaml-sound.ts'
import { type InnerText, innerPlace } from './inner-text.ts'
import { error, type Reading } from './reading.ts'
import { refuseYamlFeatures } from './refuse-yaml-features.ts'
import type { Entry, Keyed, Written } from './types.ts'

const options = {
  // Every scalar stays the text that was typed: `010`, `1e3`, `yes` and `~` are read by the formula engine or not at all.
  schema: 'failsafe',
  keepSourceTokens: true,
  prettyErrors: false,
  // Found in the walk instead, in linear time and with the place of the first.
  uniqueKeys: false,
} as const

/** What a block's YAML says. `whole` is false where a part was refused and reported. */
export interface YamlKeys {
  readonly entries: readonly Keyed[]
  readonly whole: boolean
}

interface Walk {
  readonly inner: InnerText
  readonly reading: Reading
  whole: boolean
}

const nothing: YamlKeys = { entries: [], whole: false }

/**
 * Returns the keys of a block in the author's order. Nothing is converted: nodes are walked and never made into values, so
 * that aliases cannot multiply. Refuses, with a report each, what is not YAML, what notebooks do not use of it, and keys
 * given twice.
 */
export function readYaml(inner: InnerText, reading: Reading): YamlKeys {
  if (!checkYamlLimits(inner, reading)) return nothing
  const document = parseDocument(inner.text, options)
  if (!checkYamlSound(document, inner, reading)) return nothing
  const { contents } = document
  if (contents === null) return { entries: [], whole: true }
  if (refuseYamlFeatures(contents, inner, reading)) return nothing
  if (!isMap(contents)) {
    const help = 'Write `key: value` on each line, with a blank after the colon'
    error(reading, 'yaml-syntax', {
      place: nodePlace(contents, inner),
      says: 'The block is not a list of keys with their values',
      help,
    })
    return nothing
  }
  const walk: Walk = { inner, reading, whole: true }
  const entries = readPairs(contents.items, walk)
  return { entries, whole: walk.whole }
}

function readPairs(pairs: readonly Pair[], walk: Walk): readonly Keyed[] {
  const seen = new Map<string, Written>()
  const entries: Keyed[] = []
  for (const pair of pairs) {
    const key = readKey(pair.key as Node, walk)
    if (key === undefined) continue
    const first = seen.get(key.text)
    const value = readEntry(pair.value as Node | null, key, walk)
    if (first !== undefined) reportRepeat(key, first, walk)
    else if (value !== undefined) entries.push({ key, value })
    if (first === undefined) seen.set(key.text, key)
  }
  return entries
}

function reportRepeat(key: Written, first: Written, { reading }: Walk): void {
  const notes = [{ says: 'It is first given here', place: first.place }]
  error(reading, 'key-duplicate', {
    place: key.place,
    says: `\`${key.text}\` is given twice`,
    help: 'Keep one of the two',
    notes,
  })
}

function readKey(node: Node, walk: Walk): Written | undefined {
  if (refuses(node, walk)) return undefined
  const place = nodePlace(node, walk.inner)
  const key = isScalar(node) ? readScalar(node, walk.inner) : undefined
  if (key !== undefined && key.text !== '<<') return key
  walk.whole = false
  const says =
    key === undefined ? 'A key must be a word, not a list or a map' : '`<<` merges maps, which notebooks do not do'
  error(walk.reading, 'yaml-feature', { place, says, help: 'Write the keys out' })
  return undefined
}

function readEntry(node: Node | null, key: Written, walk: Walk): Entry | undefined {
  if (node === null) {
    const { line, column, offset, end } = key.place
    return { kind: 'scalar', written: { text: '', place: { line, column: column + end - offset, offset: end, end } } }
  }
  if (refuses(node, walk)) return undefined
  if (isScalar(node)) return { kind: 'scalar', written: readScalar(node, walk.inner) }
  const place = nodePlace(node, walk.inner)
  if (isMap(node)) return { kind: 'map', entries: readPairs(node.items, walk), place }
  if (!isSeq(node)) return undefined
  const items = node.items.map(item => readEntry(item as Node | null, key, walk))
  return { kind: 'list', items: items.filter(item => item !== undefined), place }
}

function refuses(node: Node, walk: Walk): boolean {
  const refused = refuseYamlFeatures(node, walk.inner, walk.reading)
  if (refused) walk.whole = false
  return refused
}

/** Columns inside a scalar can be told where its text stands in the file character by character. */
function readScalar(node: Scalar, inner: InnerText): Written {
  const text = String(node.value ?? '')
  const [from = 0, to = 0] = node.range ?? []
  const start = from + (node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE' ? 1 : 0)
  if (inner.text.slice(start, start + text.length) === text && !text.includes('\n') && start + text.length <= to) {
    return { text, place: innerPlace(inner, start, start + text.length) }
  }
  return { text: text.trim(), place: innerPlace(inner, from, to), exact: false }
}

const nodePlace = (node: Node, inner: InnerText) => innerPlace(inner, node.range?.[0] ?? 0, node.range?.[1] ?? 0)
