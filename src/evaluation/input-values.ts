import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { readFormula } from '../formula/read-formula.ts'
import type { Input, ListInput, QuantityInput } from '../modules/module.ts'
import type { Entry, Keyed, Written } from '../notebook/types.ts'
import { dimensionSaid } from '../quantity/dimension-names.ts'
import { breakWith, type FieldValue, type InputValue, type Sink } from './definition.ts'

/** What is asked of an author: an input of a block, or a field of a row, with the key that stands or falls with it. */
export interface Asked {
  readonly input: Input
  readonly key: string
  readonly name: string
  readonly place: Place
  /** The fault that took the input's place: a key that is probably this one, misspelt, or a part that was not read. */
  readonly instead?: Diagnostic | undefined
  /** Words of the block's choices, as far as they are known before it is planned. */
  readonly chosen?: ReadonlyMap<string, string>
}

/** Reports keys that nothing asks for. Returns, by the name it was probably meant to be, the fault of each. */
export function refuseUnknownKeys(
  sink: Sink,
  entries: readonly Keyed[],
  about: { known: readonly string[]; of: string; key: string },
): ReadonlyMap<string, Diagnostic> {
  const meant = new Map<string, Diagnostic>()
  for (const { key } of entries) {
    if (about.known.includes(key.text)) continue
    const nearest = nearestName(key.text, about.known)
    const fault: Diagnostic = {
      rule: 'key-unknown',
      severity: 'error',
      place: key.place,
      says: `\`${key.text}\` is not among ${about.of}`,
      help: nearest ? `Did you mean \`${nearest}\`?` : `They are ${about.known.map(name => `\`${name}\``).join(', ')}`,
    }
    breakWith(sink, about.key, fault)
    if (nearest) meant.set(nearest, fault)
  }
  return meant
}

/** The value of an input as written, read once. Reports what is missing or of the wrong kind and marks its key as broken. */
export function inputValue(sink: Sink, keyed: Keyed | undefined, asked: Asked): InputValue | undefined {
  const { input } = asked
  if (!keyed && asked.instead) {
    sink.broken.set(asked.key, asked.instead)
    return undefined
  }
  if (input.kind === 'list') return rowsOf(sink, keyed, { ...asked, input })
  if (!keyed) return absent(sink, asked, input)
  if (keyed.value.kind !== 'scalar') {
    const says = `\`${asked.name}\` takes one value, not ${describe(keyed.value)}`
    breakWith(sink, asked.key, wrongKind(keyed.value, says))
    return undefined
  }
  const { written } = keyed.value
  if (input.kind !== 'quantity') return { kind: 'words', written, taken: false }
  return { kind: 'formula', reading: { written, read: readFormula(written.text) }, taken: false }
}

function absent(sink: Sink, asked: Asked, input: Exclude<Input, ListInput>): InputValue | undefined {
  const preset = input.kind === 'label' ? undefined : input.default
  if (preset !== undefined) {
    const written: Written = { text: preset, place: asked.place, exact: false }
    if (input.kind === 'choice') return { kind: 'words', written, taken: true }
    return { kind: 'formula', reading: { written, read: readFormula(preset) }, taken: true }
  }
  if (input.kind !== 'choice' && input.optional) return { kind: 'absent' }
  if (input.kind === 'quantity' && isIdle(input, asked)) return { kind: 'absent' }
  breakWith(sink, asked.key, {
    rule: 'key-missing',
    severity: 'error',
    place: asked.place,
    says: `\`${asked.name}\` is missing: ${input.says}`,
    help: `Write \`${asked.name}:\` with ${exampleOf(input)}`,
  })
  return undefined
}

/** Whether the words that were chosen leave an input without a part. */
function isIdle({ when }: QuantityInput, { chosen }: Asked): boolean {
  const word = when && chosen?.get(when.choice)
  return word !== undefined && !when?.is.includes(word)
}

type AskedRows = Asked & { readonly input: ListInput }

function rowsOf(sink: Sink, keyed: Keyed | undefined, asked: AskedRows): InputValue | undefined {
  const { input, name, key } = asked
  if (keyed && keyed.value.kind !== 'list') {
    breakWith(sink, key, wrongKind(keyed.value, `\`${name}\` takes a list of rows, not ${describe(keyed.value)}`))
    return undefined
  }
  const items = keyed?.value.kind === 'list' ? keyed.value.items : []
  if (items.length < input.least || items.length > input.most) {
    breakWith(sink, key, wrongCount(keyed, asked, items.length))
    return undefined
  }
  const rows = items.map(item => rowOf(sink, item, asked))
  if (rows.some(row => row === undefined)) return undefined
  return { kind: 'rows', rows: rows.filter(row => row !== undefined) }
}

function wrongCount(keyed: Keyed | undefined, { input, name, place }: AskedRows, count: number): Diagnostic {
  const { least, most } = input
  const fields = fieldsOf(input)
  if (!keyed) {
    const says = `\`${name}\` is missing: ${input.says}`
    const help = `Write \`${name}:\` with ${least} or more rows, each with ${fields}`
    return { rule: 'key-missing', severity: 'error', place, says, help }
  }
  return {
    rule: 'value-outside-range',
    severity: 'error',
    place: keyed.key.place,
    says: `\`${name}\` has ${count} rows; it takes ${least} to ${most}`,
    help: `Write ${least} to ${most} rows, each with ${fields}`,
  }
}

function rowOf(sink: Sink, item: Entry, asked: AskedRows): ReadonlyMap<string, FieldValue> | undefined {
  const { input, key } = asked
  if (item.kind !== 'map') {
    const says = `A row of \`${asked.name}\` is a map with ${fieldsOf(input)}, not ${describe(item)}`
    breakWith(sink, key, wrongKind(item, says))
    return undefined
  }
  const about = { known: Object.keys(input.fields), of: `the fields of \`${asked.name}\``, key }
  const meant = refuseUnknownKeys(sink, item.entries, about)
  const row = new Map<string, FieldValue>()
  for (const [name, field] of Object.entries(input.fields)) {
    const keyed = item.entries.find(entry => entry.key.text === name)
    const instead = meant.get(name) ?? asked.instead
    const value = inputValue(sink, keyed, { input: field, key, name, place: item.place, instead })
    if (value && value.kind !== 'rows') row.set(name, value)
  }
  return sink.broken.has(key) ? undefined : row
}

const fieldsOf = (input: ListInput): string =>
  Object.keys(input.fields)
    .map(name => `\`${name}\``)
    .join(', ')

function exampleOf(input: Exclude<Input, ListInput>): string {
  if (input.kind === 'choice')
    return `one of ${Object.keys(input.words)
      .map(word => `\`${word}\``)
      .join(', ')}`
  if (input.kind === 'quantity') return dimensionSaid(input.dimension)
  return 'a short text'
}

const describe = (entry: Entry): string => ({ scalar: 'a single value', list: 'a list', map: 'a map' })[entry.kind]

const wrongKind = (entry: Entry, says: string): Diagnostic => ({
  rule: 'value-kind',
  severity: 'error',
  place: entry.kind === 'scalar' ? entry.written.place : entry.place,
  says,
})
