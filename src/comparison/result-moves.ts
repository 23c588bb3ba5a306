import type { Line } from '../evaluation/workings.ts'
import type { Shown } from '../quantity/types.ts'
import { noise } from './attribute.ts'
import { type Moving, movedBy } from './moved-by.ts'
import type { PrintedLine } from './printed-lines.ts'
import { spotOf } from './recheck.ts'
import type { ResultMove } from './types.ts'

interface Result {
  readonly printed: PrintedLine
  /** Shared key. */
  readonly id: string
  readonly key: string
  readonly says: string
  readonly shown: Shown
}

/** Results that moved by the threshold or more, that came or that went; and how many moved by less. */
export function resultMoves(moving: Moving, threshold: number): { results: ResultMove[]; below: number } {
  const before = new Map(resultsOf(moving.old).map(each => [each.id, each]))
  const now = resultsOf(moving.now)
  const after = new Set(now.map(({ id }) => id))
  const moves = now.map(each => resultMove(moving, before.get(each.id), each))
  const gone = [...before.values()].filter(({ id }) => !after.has(id)).map(each => resultMove(moving, each, undefined))
  const moved = moves.filter(({ share }) => share === undefined || share !== 0)
  const isLarge = ({ share }: ResultMove): boolean => share === undefined || Math.abs(share) >= threshold
  return { results: [...moved.filter(isLarge), ...gone], below: moved.filter(each => !isLarge(each)).length }
}

function resultMove(moving: Moving, old: Result | undefined, now: Result | undefined): ResultMove {
  const result = now ?? old
  if (!result) throw new Error('a result stands in one of the notebooks')
  const { id, key, says, printed } = result
  const [a, b] = [moving.old.numbers.value(id), moving.now.numbers.value(id)]
  const share = old && now ? { share: shareOf(a, b) } : {}
  const moved = old && now ? movedBy(moving, { node: id, of: numbers => numbers.value(id) }) : undefined
  return {
    ...spotOf(printed),
    key,
    says,
    ...(old ? { old: old.shown } : {}),
    ...(now ? { now: now.shown } : {}),
    si: { ...(old ? { old: a } : {}), ...(now ? { now: b } : {}) },
    ...share,
    ...(moved ? { moved } : {}),
  }
}

function shareOf(old: number, now: number): number {
  if (Math.abs(now - old) <= noise * Math.max(Math.abs(old), Math.abs(now))) return 0
  return (now - old) / Math.abs(old)
}

const resultsOf = ({ key, lines }: Moving['now']): Result[] =>
  lines.flatMap(printed => givenBy(printed.line).map(each => resultOf(printed, each, key)))

function resultOf(printed: PrintedLine, given: Given, keyOf: (key: string) => string): Result {
  const key = `${printed.block}.${given.name}`
  return { printed, id: keyOf(key), key, says: given.says, shown: given.shown }
}

type Given = { readonly name: string; readonly says: string; readonly shown: Shown }

function givenBy(line: Line): readonly Given[] {
  if (line.kind === 'formula' || line.kind === 'look') return [{ name: line.name, says: line.says, shown: line.result }]
  if (line.kind !== 'solve') return []
  return line.gives.map(({ name, says, printed }) => ({ name, says, shown: printed.shown }))
}
