import type { Block, Entry, Keyed } from '../notebook/types.ts'
import { type Edit, inBlock, restOf, usesOf } from './edit.ts'
import type { Compared, InputAbout } from './input-edit.ts'
import { isAsBefore, type MapEntry, matchRows, type RowMatch, rowsIn } from './match-rows.ts'
import { entryText, entryTexts } from './meaning.ts'
import { rowKey } from './row-names.ts'

/** Fields of the rows that both lists have, one by one; nothing where they are no such lists. */
export function rowwise(a: Keyed | undefined, b: Keyed | undefined, block: string): Compared[] | undefined {
  const [before, after] = [rowsIn(a?.value), rowsIn(b?.value)]
  if (!before || !after) return undefined
  return matchRows(before, after, block).flatMap((was, is) => {
    const [old, now] = [was === undefined ? undefined : before[was], after[is]]
    if (was === undefined || !old || !now) return []
    const fields = new Set([...old.entries, ...now.entries].map(({ key }) => key.text))
    return [...fields].map(name => {
      const [from, to] = [old, now].map(map => map.entries.find(({ key }) => key.text === name))
      return { name, row: { of: old, was, is }, ...(from && { a: from }), ...(to && { b: to }) }
    })
  })
}

/** Rows that came into a list or went out of it, each a change of its own. */
export function wholeRowEdits(a: Keyed | undefined, b: Keyed | undefined, about: InputAbout): Edit[] {
  const [before, after] = [rowsIn(a?.value), rowsIn(b?.value)]
  if (!before || !after) return []
  const match = matchRows(before, after, about.old.name.text)
  if (isAsBefore(match, before.length)) return []
  const come = after.flatMap((row, index) =>
    match[index] === undefined ? [comeEdit(row, { index, after, before, match, about })] : [],
  )
  const gone = before.flatMap((row, index) => (match.includes(index) ? [] : [goneEdit(row, index, about)]))
  return [...come, ...gone]
}

interface Come {
  readonly index: number
  readonly before: readonly MapEntry[]
  readonly after: readonly MapEntry[]
  readonly match: RowMatch
  readonly about: InputAbout
}

function comeEdit(row: MapEntry, { index, before, after, match, about }: Come): Edit {
  // Places of the rows above it, the nearest first: it is put in behind the first of them that is there.
  const above = after
    .slice(0, index)
    .map((each, at) => before[match[at] ?? -1] ?? each)
    .reverse()
    .map(({ place }) => place)
  const put = (items: readonly Entry[]): readonly Entry[] => {
    const places = items.map(item => (item.kind === 'map' ? item.place : undefined))
    const found = above.find(place => places.includes(place))
    return items.toSpliced(places.indexOf(found) + 1, 0, row)
  }
  return rowEdit(row, { index, about, action: 'added', put: found => put(found) })
}

const goneEdit = (row: MapEntry, index: number, about: InputAbout): Edit =>
  rowEdit(row, {
    index,
    about,
    action: 'removed',
    put: items => items.filter(item => item.kind !== 'map' || item.place !== row.place),
  })

interface Whole {
  /** In the list that has the row. */
  readonly index: number
  readonly about: InputAbout
  readonly action: 'added' | 'removed'
  readonly put: (items: readonly Entry[]) => readonly Entry[]
}

function rowEdit(row: MapEntry, { index, about: { old, now, shown, input }, action, put }: Whole): Edit {
  const block = old.name.text
  const inList = (keyed: Keyed): Keyed =>
    keyed.key.text === input && keyed.value.kind === 'list'
      ? { key: keyed.key, value: { ...keyed.value, items: put(keyed.value.items) } }
      : keyed
  const keys = row.entries.map(({ key }) =>
    rowKey(`${block}.${key.text}`, action === 'added' ? undefined : index, index),
  )
  return {
    change: {
      what: 'input',
      action,
      key: shown(`${block}.${input}_${index + 1}`),
      [action === 'added' ? 'now' : 'old']: entryText(row),
      fields: [],
      bears: true,
      line: row.place.line ?? now.place.line,
    },
    put: inBlock(block, (within: Block) =>
      within.kind === 'calc' ? { ...within, inputs: within.inputs.map(inList) } : within,
    ),
    brings: [],
    uses: usesOf(entryTexts(row), block),
    enters: [...keys, restOf(block)],
  }
}
