import type { Entry } from '../notebook/types.ts'
import { entryMeaning, isWorkedOut } from './meaning.ts'
import { noRenames } from './renames.ts'

export type MapEntry = Extract<Entry, { kind: 'map' }>

/** For each row of the new list its index in the old one; nothing for a row that came. */
export type RowMatch = readonly (number | undefined)[]

/** Rows of a list, all of them maps; nothing where they are not. */
export function rowsIn(entry: Entry | undefined): readonly MapEntry[] | undefined {
  if (entry?.kind !== 'list') return undefined
  const rows = entry.items.filter((item): item is MapEntry => item.kind === 'map')
  return rows.length === entry.items.length ? rows : undefined
}

export const isAsBefore = (match: RowMatch, old: number): boolean =>
  match.length === old && match.every((was, index) => was === index)

/**
 * Which row of the new list was which of the old, in order: first the rows that say the same, as many as can be; between those, rows with the
 * same words (a label, a material) and then, where as many are left on both sides, those that stand in the same place.
 */
export function matchRows(old: readonly Entry[], now: readonly Entry[], block: string): RowMatch {
  const means = (entry: Entry): string => entryMeaning(entry, { block, renames: noRenames })
  const same = commonRows(old.map(means), now.map(means))
  const match: (number | undefined)[] = now.map((_, index) => same.get(index))
  for (const gap of gapsOf(match, old.length)) {
    for (const [is, was] of commonRows(
      gap.old.map(at => wordsOf(old[at], means)),
      gap.now.map(at => wordsOf(now[at], means)),
    ))
      match[gap.now[is] as number] = gap.old[was]
    const left = {
      old: gap.old.filter(at => !match.includes(at)),
      now: gap.now.filter(at => match[at] === undefined),
    }
    if (left.old.length === left.now.length) for (const [at, is] of left.now.entries()) match[is] = left.old[at]
  }
  return inOrder(match)
}

/** The words of a row, by which its author would know it; of its own for a row without any. */
function wordsOf(entry: Entry | undefined, means: (entry: Entry) => string): string {
  if (entry?.kind !== 'map') return ''
  const words = entry.entries.filter(({ value }) => !isWorkedOut(value))
  return words
    .map(({ key, value }) => `${key.text} ${means(value)}`)
    .sort()
    .join('\n')
}

/** The longest run of rows that both have in the same order: new index to old. Rows without a text have no like. */
function commonRows(old: readonly string[], now: readonly string[]): ReadonlyMap<number, number> {
  const isLike = (a: number, b: number): boolean => old[a] !== '' && old[a] === now[b]
  const longest = old.map(() => now.map(() => 0)).concat([now.map(() => 0)])
  const at = (a: number, b: number): number => longest[a]?.[b] ?? 0
  for (let a = old.length - 1; a >= 0; a -= 1)
    for (let b = now.length - 1; b >= 0; b -= 1)
      (longest[a] as number[])[b] = isLike(a, b) ? at(a + 1, b + 1) + 1 : Math.max(at(a + 1, b), at(a, b + 1))
  const found = new Map<number, number>()
  for (let a = 0, b = 0; a < old.length && b < now.length; )
    if (isLike(a, b)) found.set(b++, a++)
    else if (at(a + 1, b) >= at(a, b + 1)) a += 1
    else b += 1
  return found
}

/** Rows of both lists that stand between two that are matched. */
function gapsOf(match: readonly (number | undefined)[], old: number): { old: number[]; now: number[] }[] {
  const gaps = [{ old: [] as number[], now: [] as number[] }]
  let next = 0
  for (const [index, was] of match.entries()) {
    const gap = gaps.at(-1)
    if (was === undefined) gap?.now.push(index)
    else {
      while (next < was) gap?.old.push(next++)
      next = was + 1
      gaps.push({ old: [], now: [] })
    }
  }
  while (next < old) gaps.at(-1)?.old.push(next++)
  return gaps
}

/** A match that would cross another is none: what is left over in a gap stands in its order. */
function inOrder(match: readonly (number | undefined)[]): RowMatch {
  let last = -1
  return match.map(was => {
    if (was === undefined || was <= last) return undefined
    last = was
    return was
  })
}
