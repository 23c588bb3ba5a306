import { readFormula } from '../formula/read-formula.ts'
import type { Block, CalcBlock, Entry, Keyed } from '../notebook/types.ts'
import { type Differences, type Edit, inBlock, reordered, restOf, usesOf } from './edit.ts'
import { entryMeaning, entryText, entryTexts } from './meaning.ts'
import { stepBetween } from './number-step.ts'
import { noRenames } from './renames.ts'
import type { FieldChange } from './types.ts'

type Shown = (key: string) => string

/** What differs between two calc blocks of one name: input by input, or as one change where the module is another. */
export function calcEdits(old: CalcBlock, now: CalcBlock, shown: Shown): Differences {
  const block = old.name.text
  if (old.module.text !== now.module.text)
    return { edits: [moduleEdit(old, now, shown(block))], written: [], order: false, checks: new Map() }
  const names = (of: CalcBlock): string[] => of.inputs.map(({ key }) => key.text)
  const edits: Edit[] = []
  const written: string[] = []
  for (const name of new Set([...names(now), ...names(old)])) {
    const [a, b] = [inputOf(old, name), inputOf(now, name)]
    const parts = rowwise(a, b) ?? [{ name, ...(a && { a }), ...(b && { b }) }]
    const moved = parts.filter(part => isMoved(part, block))
    for (const part of moved) edits.push(inputEdit({ ...part, input: name }, { old, now, shown }))
    if (moved.length === 0 && a && b && entryText(a.value) !== entryText(b.value))
      written.push(shown(`${block}.${name}`))
  }
  return { edits, written, order: reordered(names(old), names(now)), checks: new Map() }
}

const inputOf = (block: CalcBlock, name: string): Keyed | undefined => block.inputs.find(({ key }) => key.text === name)

/** One input, or one field of one row. */
interface Compared {
  readonly name: string
  readonly a?: Keyed
  readonly b?: Keyed
  /** Index of the row. */
  readonly row?: number
}

/** Fields of a list whose rows are as many as before, one by one; nothing where it is no such list. */
function rowwise(a: Keyed | undefined, b: Keyed | undefined): Compared[] | undefined {
  if (a?.value.kind !== 'list' || b?.value.kind !== 'list' || a.value.items.length !== b.value.items.length)
    return undefined
  const { items } = b.value
  if ([...a.value.items, ...items].some(({ kind }) => kind !== 'map')) return undefined
  return a.value.items.flatMap((item, row) => {
    const other = items[row]
    if (item.kind !== 'map' || other?.kind !== 'map') return []
    const fields = new Set([...item.entries, ...other.entries].map(({ key }) => key.text))
    return [...fields].map(name => {
      const [old, now] = [item, other].map(map => map.entries.find(({ key }) => key.text === name))
      return { name, row, ...(old && { a: old }), ...(now && { b: now }) }
    })
  })
}

function isMoved({ a, b }: Compared, block: string): boolean {
  const means = (keyed: Keyed | undefined): string =>
    keyed ? entryMeaning(keyed.value, { block, renames: noRenames }) : ''
  return means(a) !== means(b)
}

function inputEdit(
  { name, input, row, a, b }: Compared & { readonly input: string },
  { old, now, shown }: { old: CalcBlock; now: CalcBlock; shown: Shown },
): Edit {
  const block = old.name.text
  const key = `${block}.${row === undefined ? name : `${name}_${row + 1}`}`
  const [from, to] = [a && entryText(a.value), b && entryText(b.value)]
  const step = from !== undefined && to !== undefined ? stepBetween(from, to) : undefined
  const put = (within: Block): Block => {
    if (within.kind !== 'calc') return within
    if (row === undefined) return { ...within, inputs: withKey(within.inputs, name, b) }
    return {
      ...within,
      inputs: within.inputs.map(each => (each.key.text === input ? inRow(each, { row, name, b }) : each)),
    }
  }
  return {
    change: {
      what: 'input',
      action: from === undefined ? 'added' : to === undefined ? 'removed' : 'changed',
      key: shown(key),
      ...(from === undefined ? {} : { old: from }),
      ...(to === undefined ? {} : { now: to }),
      ...(step ? { step } : {}),
      fields: [],
      bears: true,
      line: (b ?? a ?? now.inputs[0])?.key.place.line ?? now.place.line,
    },
    put: inBlock(block, put),
    brings: [],
    uses: usesOf(
      [a, b].flatMap(keyed => (keyed ? entryTexts(keyed.value) : [])),
      block,
    ),
    enters: [key, ...rowKeys(block, [a, b]), ...([a, b].every(isFormula) ? [] : [restOf(block)])],
  }
}

/** A number or a formula, which is worked out; not a word or a list, by which the whole block is planned. */
function isFormula(keyed: Keyed | undefined): boolean {
  if (keyed?.value.kind !== 'scalar') return false
  const read = readFormula(keyed.value.written.text)
  return read.ok && (read.formula.tree.kind !== 'name' || read.formula.tree.name.includes('.'))
}

/** The values of the rows of a whole list. */
const rowKeys = (block: string, lists: readonly (Keyed | undefined)[]): readonly string[] =>
  lists.flatMap(keyed => {
    if (keyed?.value.kind !== 'list') return []
    return keyed.value.items.flatMap((item, index) =>
      item.kind === 'map' ? item.entries.map(entry => `${block}.${entry.key.text}_${index + 1}`) : [],
    )
  })

function withKey(entries: readonly Keyed[], name: string, now: Keyed | undefined): readonly Keyed[] {
  if (!now) return entries.filter(({ key }) => key.text !== name)
  return entries.some(({ key }) => key.text === name)
    ? entries.map(each => (each.key.text === name ? now : each))
    : [...entries, now]
}

function inRow(list: Keyed, at: { row: number; name: string; b: Keyed | undefined }): Keyed {
  if (list.value.kind !== 'list') return list
  const items = list.value.items.map(
    (item, index): Entry =>
      index === at.row && item.kind === 'map' ? { ...item, entries: withKey(item.entries, at.name, at.b) } : item,
  )
  return { key: list.key, value: { ...list.value, items } }
}

function moduleEdit(old: CalcBlock, now: CalcBlock, key: string): Edit {
  const block = old.name.text
  const names = new Set([...now.inputs, ...old.inputs].map(each => each.key.text))
  const fields = [...names].flatMap((field): FieldChange[] => {
    const [a, b] = [old, now].map(of => inputOf(of, field)).map(each => (each ? entryText(each.value) : ''))
    return a === undefined || b === undefined || a === b ? [] : [{ field, old: a, now: b }]
  })
  return {
    change: {
      what: 'module',
      action: 'changed',
      key,
      old: old.module.text,
      now: now.module.text,
      fields,
      bears: true,
      line: now.module.place.line,
    },
    put: inBlock(block, () => now),
    brings: [block],
    uses: usesOf(
      [...old.inputs, ...now.inputs].flatMap(({ value }) => entryTexts(value)),
      block,
    ),
    enters: [block, restOf(block)],
  }
}
