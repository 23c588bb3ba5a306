import type { Block, CalcBlock, Keyed } from '../notebook/types.ts'
import { type Edit, inBlock, restOf, usesOf } from './edit.ts'
import type { MapEntry } from './match-rows.ts'
import { entryText, entryTexts, isWorkedOut } from './meaning.ts'
import { stepBetween } from './number-step.ts'

/** One input, or one field of one row, in the old block and in the new one. */
export interface Compared {
  readonly name: string
  readonly a?: Keyed
  readonly b?: Keyed
  /** The row that it is of: itself in the old list, and its index there and now. */
  readonly row?: { readonly of: MapEntry; readonly was: number; readonly is: number }
}

/** Of which block's input something is told. */
export interface InputAbout {
  readonly old: CalcBlock
  readonly now: CalcBlock
  /** A key as the new notebook has it. */
  readonly shown: (key: string) => string
  readonly input: string
}

/** A changed input, or a changed field of a row. */
export function inputEdit({ name, row, a, b }: Compared, { old, now, shown, input }: InputAbout): Edit {
  const block = old.name.text
  const key = `${block}.${row === undefined ? name : `${name}_${row.was + 1}`}`
  const [from, to] = [a && entryText(a.value), b && entryText(b.value)]
  const step = from !== undefined && to !== undefined ? stepBetween(from, to) : undefined
  const put = (within: Block): Block => {
    if (within.kind !== 'calc') return within
    if (row === undefined) return { ...within, inputs: withKey(within.inputs, name, b) }
    return {
      ...within,
      inputs: within.inputs.map(each => (each.key.text === input ? inRow(each, { row: row.of, name, b }) : each)),
    }
  }
  return {
    change: {
      what: 'input',
      action: from === undefined ? 'added' : to === undefined ? 'removed' : 'changed',
      key: shown(row === undefined ? key : `${block}.${name}_${row.is + 1}`),
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
    enters: [
      key,
      ...rowKeys(block, [a, b]),
      ...([a, b].every(keyed => isWorkedOut(keyed?.value)) ? [] : [restOf(block)]),
    ],
  }
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

/** The list with one field of a row put otherwise; the row is known by its place in the file, at whatever index it stands by now. */
function inRow(list: Keyed, at: { row: MapEntry; name: string; b: Keyed | undefined }): Keyed {
  if (list.value.kind !== 'list') return list
  const items = list.value.items.map(item =>
    item.kind === 'map' && item.place === at.row.place
      ? { ...item, entries: withKey(item.entries, at.name, at.b) }
      : item,
  )
  return { key: list.key, value: { ...list.value, items } }
}
