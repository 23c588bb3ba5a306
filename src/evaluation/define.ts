import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { readFormula } from '../formula/read-formula.ts'
import type { Read } from '../formula/types.ts'
import type { Input, ListInput, Module } from '../modules/module.ts'
import type { Assumption, CalcBlock, Entry, Keyed, Notebook, Statement, WorkBlock, Written } from '../notebook/types.ts'

/** A formula as written and as read. */
export interface Reading {
  readonly written: Written
  readonly read: Read
}

/** The value of one input or field: a formula, words, or absent so that its default stands. */
export type FieldValue =
  | { readonly kind: 'formula'; readonly reading: Reading; readonly taken: boolean }
  | { readonly kind: 'words'; readonly written: Written; readonly taken: boolean }
  | { readonly kind: 'absent' }

export type InputValue =
  | FieldValue
  | { readonly kind: 'rows'; readonly rows: readonly ReadonlyMap<string, FieldValue>[] }

/** A place that refers to a name. */
export interface Use {
  readonly name: string
  readonly place: Place
}

interface Base {
  readonly key: string
  readonly block: number
  readonly uses: readonly Use[]
  readonly place: Place
}

/** What must be planned one after another. A module's node uses the nodes of all its inputs. */
export type Definition =
  | (Base & { readonly kind: 'assumption'; readonly assumption: Assumption })
  | (Base & { readonly kind: 'input'; readonly name: string; readonly input: Input; readonly value: InputValue })
  | (Base & { readonly kind: 'module'; readonly module: Module })
  | (Base & {
      readonly kind: 'statement'
      readonly statement: Statement
      readonly reading?: Reading
      readonly index: number
    })

export interface Defined {
  readonly definitions: readonly Definition[]
  readonly diagnostics: readonly Diagnostic[]
  /** Keys and blocks that exist but cannot be planned, with the fault that says why. */
  readonly broken: ReadonlyMap<string, Diagnostic>
}

interface Sink {
  readonly definitions: Definition[]
  readonly diagnostics: Diagnostic[]
  readonly broken: Map<string, Diagnostic>
}

/** Every named thing of the notebook with what it uses: reads each formula once, asks nothing of units or numbers. */
export function define(notebook: Notebook, modules: readonly Module[]): Defined {
  const sink: Sink = { definitions: [], diagnostics: [], broken: new Map() }
  const byId = new Map(modules.map(module => [module.id, module]))
  notebook.blocks.forEach((block, index) => {
    if (block.kind === 'assume') defineAssumptions(sink, block.assumptions, { block: block.name.text, index })
    else if (block.kind === 'work') defineStatements(sink, block, index)
    else defineCalc(sink, block, { index, byId })
  })
  return sink
}

function defineAssumptions(sink: Sink, assumptions: readonly Assumption[], at: { block: string; index: number }): void {
  for (const assumption of assumptions) {
    const key = `${at.block}.${assumption.name.text}`
    sink.definitions.push({
      kind: 'assumption',
      key,
      block: at.index,
      uses: [],
      place: assumption.name.place,
      assumption,
    })
  }
}

function defineStatements(sink: Sink, block: WorkBlock, index: number): void {
  block.statements.forEach((statement, number) => {
    const name = statement.kind === 'check' ? `check_${number + 1}` : statement.name.text
    const base = { key: `${block.name.text}.${name}`, block: index, statement, index: number } as const
    const place = statement.kind === 'check' ? statement.formula.place : statement.name.place
    if (statement.kind === 'table') {
      sink.definitions.push({ kind: 'statement', ...base, place, uses: [] })
      return
    }
    const reading = { written: statement.formula, read: readFormula(statement.formula.text) }
    sink.definitions.push({ kind: 'statement', ...base, place, uses: usesOf(reading), reading })
  })
}

function defineCalc(sink: Sink, block: CalcBlock, more: { index: number; byId: ReadonlyMap<string, Module> }): void {
  const module = more.byId.get(block.module.text)
  if (!module) {
    const nearest = nearestName(block.module.text, [...more.byId.keys()])
    breakWith(sink, block.name.text, {
      rule: 'module-unknown',
      severity: 'error',
      place: block.module.place,
      says: `No module is called \`${block.module.text}\``,
      help: nearest ? `Did you mean \`${nearest}\`?` : '`undercroft modules` lists them',
    })
    return
  }
  const given = new Map(block.inputs.map(keyed => [keyed.key.text, keyed]))
  refuseUnknownKeys(sink, block.inputs, { known: Object.keys(module.inputs), of: `the inputs of ${module.id}` })
  const uses: Use[] = []
  for (const [name, input] of Object.entries(module.inputs)) {
    const key = `${block.name.text}.${name}`
    const value = inputValue(sink, given.get(name), { input, key, name, place: block.name.place })
    const place = given.get(name)?.key.place ?? block.name.place
    uses.push({ name: key, place })
    if (value)
      sink.definitions.push({
        kind: 'input',
        key,
        block: more.index,
        name,
        input,
        value,
        uses: usesOfValue(value),
        place,
      })
  }
  sink.definitions.push({ kind: 'module', key: block.name.text, block: more.index, module, uses, place: block.place })
}

function refuseUnknownKeys(
  sink: Sink,
  entries: readonly Keyed[],
  about: { known: readonly string[]; of: string },
): void {
  for (const { key } of entries) {
    if (about.known.includes(key.text)) continue
    const nearest = nearestName(key.text, about.known)
    sink.diagnostics.push({
      rule: 'key-unknown',
      severity: 'error',
      place: key.place,
      says: `\`${key.text}\` is not among ${about.of}`,
      help: nearest ? `Did you mean \`${nearest}\`?` : `They are ${about.known.map(name => `\`${name}\``).join(', ')}`,
    })
  }
}

type Asked = { readonly input: Input; readonly key: string; readonly name: string; readonly place: Place }

function inputValue(sink: Sink, keyed: Keyed | undefined, asked: Asked): InputValue | undefined {
  const { input } = asked
  if (input.kind === 'list') return rowsOf(sink, keyed, { ...asked, input })
  if (!keyed) return absent(sink, asked)
  if (keyed.value.kind !== 'scalar') {
    breakWith(
      sink,
      asked.key,
      wrongKind(keyed.value, `\`${asked.name}\` takes one value, not ${describe(keyed.value)}`),
    )
    return undefined
  }
  const { written } = keyed.value
  if (input.kind !== 'quantity') return { kind: 'words', written, taken: false }
  return { kind: 'formula', reading: { written, read: readFormula(written.text) }, taken: false }
}

function absent(sink: Sink, asked: Asked): InputValue | undefined {
  const { input } = asked
  if (input.kind === 'list') return undefined
  const preset = input.kind === 'label' ? undefined : input.default
  if (preset !== undefined) {
    const written: Written = { text: preset, place: asked.place, exact: false }
    if (input.kind === 'choice') return { kind: 'words', written, taken: true }
    return { kind: 'formula', reading: { written, read: readFormula(preset) }, taken: true }
  }
  if (input.kind !== 'choice' && input.optional) return { kind: 'absent' }
  breakWith(sink, asked.key, {
    rule: 'key-missing',
    severity: 'error',
    place: asked.place,
    says: `\`${asked.name}\` is missing: ${input.says}`,
    help: `Write \`${asked.name}:\` with ${exampleOf(input)}`,
  })
  return undefined
}

function rowsOf(
  sink: Sink,
  keyed: Keyed | undefined,
  asked: Asked & { readonly input: ListInput },
): InputValue | undefined {
  const { input, name } = asked
  const items = keyed?.value.kind === 'list' ? keyed.value.items : []
  const place = keyed?.key.place ?? asked.place
  if (keyed && keyed.value.kind !== 'list') {
    breakWith(sink, asked.key, wrongKind(keyed.value, `\`${name}\` takes a list of rows, not ${describe(keyed.value)}`))
    return undefined
  }
  if (items.length < input.least || items.length > input.most) {
    const rule = keyed ? 'value-outside-range' : 'key-missing'
    const says = keyed
      ? `\`${name}\` has ${items.length} rows; it takes ${input.least} to ${input.most}`
      : `\`${name}\` is missing: ${input.says}`
    breakWith(sink, asked.key, {
      rule,
      severity: 'error',
      place,
      says,
      help: `Write ${input.least} or more rows, each with ${fieldsOf(input)}`,
    })
    return undefined
  }
  const rows = items.map((item, index) => rowOf(sink, item, { ...asked, index }))
  if (rows.some(row => row === undefined)) return undefined
  return { kind: 'rows', rows: rows.filter(row => row !== undefined) }
}

function rowOf(
  sink: Sink,
  item: Entry,
  asked: Asked & { input: ListInput; index: number },
): ReadonlyMap<string, FieldValue> | undefined {
  const { input, key } = asked
  if (item.kind !== 'map') {
    breakWith(
      sink,
      key,
      wrongKind(item, `A row of \`${asked.name}\` is a map with ${fieldsOf(input)}, not ${describe(item)}`),
    )
    return undefined
  }
  refuseUnknownKeys(sink, item.entries, { known: Object.keys(input.fields), of: `the fields of \`${asked.name}\`` })
  const row = new Map<string, FieldValue>()
  for (const [name, field] of Object.entries(input.fields)) {
    const keyed = item.entries.find(entry => entry.key.text === name)
    const value = inputValue(sink, keyed, { input: field, key, name, place: item.place })
    if (!value || value.kind === 'rows') return undefined
    row.set(name, value)
  }
  return row
}

const fieldsOf = (input: ListInput): string =>
  Object.keys(input.fields)
    .map(name => `\`${name}\``)
    .join(', ')

function exampleOf(input: Input): string {
  if (input.kind === 'choice')
    return `one of ${Object.keys(input.words)
      .map(word => `\`${word}\``)
      .join(', ')}`
  if (input.kind === 'quantity') return `a ${input.dimension.replaceAll('_', ' ')}`
  return 'a short text'
}

const describe = (entry: Entry): string => ({ scalar: 'a single value', list: 'a list', map: 'a map' })[entry.kind]

const wrongKind = (entry: Entry, says: string): Diagnostic => ({
  rule: 'value-kind',
  severity: 'error',
  place: entry.kind === 'scalar' ? entry.written.place : entry.place,
  says,
})

function breakWith(sink: Sink, key: string, fault: Diagnostic): void {
  sink.diagnostics.push(fault)
  if (!sink.broken.has(key)) sink.broken.set(key, fault)
}

const reference = /^[\p{L}_][\p{L}\p{N}_]*\.[\p{L}_][\p{L}\p{N}_]*$/u

/** True where words are a reference to a short text elsewhere: `site.ground`. */
export const isReference = (text: string): boolean => reference.test(text)

function usesOfValue(value: InputValue): Use[] {
  if (value.kind === 'rows') return value.rows.flatMap(row => [...row.values()].flatMap(usesOfValue))
  if (value.kind === 'formula') return usesOf(value.reading)
  if (value.kind === 'words' && isReference(value.written.text))
    return [{ name: value.written.text, place: value.written.place }]
  return []
}

function usesOf(reading: Reading): Use[] {
  if (!reading.read.ok) return []
  return reading.read.formula.names.map(name => ({ name, place: reading.written.place }))
}
