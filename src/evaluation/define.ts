import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { placeWithin } from '../diagnostic/place-within.ts'
import { nameSpans } from '../formula/names-of.ts'
import { readFormula } from '../formula/read-formula.ts'
import type { Span } from '../formula/types.ts'
import type { Input, Module } from '../modules/module.ts'
import type { AssumeBlock, CalcBlock, Keyed, Notebook, Statement, WorkBlock } from '../notebook/types.ts'
import {
  breakWith,
  type Defined,
  type InputValue,
  isReference,
  type Reading,
  type Sink,
  type Use,
} from './definition.ts'
import { inputValue, refuseUnknownKeys } from './input-values.ts'
import { lostBlocks, unreadCause } from './lost-blocks.ts'
import { otherCode } from './other-code.ts'

/** Every named thing of the notebook with what it uses: reads each formula once, asks nothing of units or numbers. */
export function define(notebook: Notebook, modules: readonly Module[]): Defined {
  const sink: Sink = { definitions: [], diagnostics: [], broken: new Map() }
  const byId = new Map(modules.map(module => [module.id, module]))
  notebook.blocks.forEach((block, index) => {
    if (block.kind === 'assume') defineAssumptions(sink, block, index)
    else if (block.kind === 'work') defineStatements(sink, block, index)
    else defineCalc(sink, block, { index, byId, codes: notebook.title.codes, unread: unreadCause(notebook, block) })
  })
  return { ...sink, lost: lostBlocks(notebook) }
}

function defineAssumptions(sink: Sink, { assumptions, name }: AssumeBlock, block: number): void {
  for (const assumption of assumptions) {
    const { text, place } = assumption.name
    sink.definitions.push({ kind: 'assumption', key: `${name.text}.${text}`, block, uses: [], place, assumption })
  }
}

function defineStatements(sink: Sink, block: WorkBlock, index: number): void {
  block.statements.forEach((statement, number) => {
    const base = { key: keyOf(statement, block, number), block: index, statement, index: number } as const
    const place = statement.kind === 'check' ? statement.formula.place : statement.name.place
    if (statement.kind === 'table') {
      sink.definitions.push({ kind: 'statement', ...base, place, uses: [] })
      return
    }
    const reading = { written: statement.formula, read: readFormula(statement.formula.text) }
    sink.definitions.push({ kind: 'statement', ...base, place, uses: usesOf(reading), reading })
  })
}

/** A check has no name of its own: its key holds a blank, which no name can. */
const keyOf = (statement: Statement, block: WorkBlock, number: number): string =>
  `${block.name.text}.${statement.kind === 'check' ? `check ${number + 1}` : statement.name.text}`

interface CalcAbout {
  readonly index: number
  readonly byId: ReadonlyMap<string, Module>
  /** The design codes that the title block lists. */
  readonly codes: readonly string[]
  /** Set where the block was not read whole. */
  readonly unread: Diagnostic | undefined
}

function defineCalc(sink: Sink, block: CalcBlock, about: CalcAbout): void {
  const { text: name, place: head } = block.name
  const module = about.byId.get(block.module.text)
  if (!module) {
    breakWith(sink, name, unknownModule(block, [...about.byId.keys()]))
    return
  }
  if (about.unread) sink.broken.set(name, about.unread)
  const mixed = otherCode(block, module, about.codes)
  if (mixed) sink.diagnostics.push(mixed)
  const given = new Map(block.inputs.map(keyed => [keyed.key.text, keyed]))
  const known = { known: Object.keys(module.inputs), of: `the inputs of ${module.id}`, key: name }
  const meant = refuseUnknownKeys(sink, block.inputs, known)
  const uses: Use[] = []
  const chosen = chosenIn(module, given)
  for (const [asked, input] of Object.entries(module.inputs)) {
    const key = `${name}.${asked}`
    const keyed = given.get(asked)
    const instead = meant.get(asked) ?? about.unread
    const value = inputValue(sink, keyed, { input, key, name: asked, place: head, instead, chosen })
    const place = keyed?.key.place ?? head
    uses.push({ name: key, place })
    const base = { key, block: about.index, name: asked, input, place } as const
    if (value) sink.definitions.push({ kind: 'input', ...base, value, uses: usesOfValue(value, input) })
  }
  sink.definitions.push({ kind: 'module', key: name, block: about.index, module, uses, place: block.place })
}

function unknownModule({ module }: CalcBlock, ids: readonly string[]): Diagnostic {
  const nearest = nearestName(module.text, ids)
  const help = nearest ? `Did you mean \`${nearest}\`?` : '`undercroft modules` lists them'
  const says = `No module is called \`${module.text}\``
  return { rule: 'module-unknown', severity: 'error', place: module.place, says, help }
}

/** The words that the block itself writes or leaves at their default; a word taken from elsewhere is not known here. */
function chosenIn({ inputs }: Module, given: ReadonlyMap<string, Keyed>): ReadonlyMap<string, string> {
  const chosen = new Map<string, string>()
  for (const [name, input] of Object.entries(inputs)) {
    if (input.kind !== 'choice') continue
    const value = given.get(name)?.value
    const word = value === undefined ? input.default : value.kind === 'scalar' ? value.written.text : undefined
    if (word !== undefined && Object.hasOwn(input.words, word)) chosen.set(name, word)
  }
  return chosen
}

const absentValue: InputValue = { kind: 'absent' }

/** A label is prose, whatever it looks like; only a choice may take its word from elsewhere. */
function usesOfValue(value: InputValue, input: Input): Use[] {
  if (value.kind === 'rows') {
    const fields = input.kind === 'list' ? input.fields : {}
    return value.rows.flatMap(row =>
      Object.entries(fields).flatMap(([name, field]) => usesOfValue(row.get(name) ?? absentValue, field)),
    )
  }
  if (value.kind === 'formula') return usesOf(value.reading)
  if (value.kind !== 'words' || input.kind !== 'choice') return []
  const { text: name, place } = value.written
  return isReference(name) && !Object.hasOwn(input.words, name) ? [{ name, place }] : []
}

function usesOf({ read, written }: Reading): Use[] {
  if (!read.ok) return []
  const placeOf = (span: Span): Place => (written.exact === false ? written.place : placeWithin(written.place, span))
  return [...nameSpans(read.formula.tree)].map(([name, span]) => ({ name, place: placeOf(span) }))
}
