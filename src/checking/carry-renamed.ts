import { matchEntries } from './match-entries.ts'
import { type BlockRecord, type CheckingRecord, emptyBlock, type Tick } from './record.ts'
import type { NamedStep } from './step-name.ts'

/** The steps of each block of the package, by its name. */
export type BlockSteps = ReadonlyMap<string, readonly NamedStep[]>

/**
 * The record with the entries of blocks that were renamed under their new names. The record alone says so: a block that is in the package no
 * more was renamed where more than half of its ticks find their step in one that has none of its own yet, a third of them stand there, and as
 * many in no other. A tick keeps the name of the block that it was made in.
 */
export function carryRenamed(record: CheckingRecord, blocks: BlockSteps): CheckingRecord {
  const pairs = [...record].flatMap(([was, entries]) =>
    blocks.has(was) || entries.ticks.length === 0 ? [] : likeliest(was, entries, { record, blocks }),
  )
  const carried = new Map(record)
  for (const { was, is } of pairs) {
    if (pairs.filter(pair => pair.is === is).length > 1) continue
    carried.set(is, joined(carried.get(is) ?? emptyBlock, carried.get(was) ?? emptyBlock, was))
    carried.delete(was)
  }
  return carried
}

interface Pair {
  readonly was: string
  readonly is: string
}

function likeliest(
  was: string,
  entries: BlockRecord,
  { record, blocks }: { readonly record: CheckingRecord; readonly blocks: BlockSteps },
): readonly Pair[] {
  const ticks = entries.ticks.length
  const scores = [...blocks]
    .filter(([name]) => isFree(record.get(name), was))
    .map(([is, steps]) => ({ is, ...countsIn(entries, steps) }))
    .filter(({ standing, found }) => found * 2 > ticks && standing * 3 >= ticks)
  const best = Math.max(0, ...scores.map(({ standing }) => standing))
  const likely = scores.filter(({ standing }) => standing === best)
  return likely.length === 1 ? likely.map(({ is }) => ({ was, is })) : []
}

/** Whether a block has no entries but such as were carried from the other. */
const isFree = (entries: BlockRecord | undefined, was: string): boolean =>
  !entries || (entries.comments.length === 0 && entries.ticks.every(({ from }) => from === was))

/** How many ticks would stand at the steps, and how many would find their step at all. */
function countsIn(entries: BlockRecord, steps: readonly NamedStep[]): { standing: number; found: number } {
  const matched = matchEntries(entries, steps)
  const standing = [...matched.standing.values()].flat().length
  return { standing, found: standing + [...matched.fallen.values()].flat().length }
}

function joined(own: BlockRecord, other: BlockRecord, was: string): BlockRecord {
  const carried = other.ticks.map((tick): Tick => ({ ...tick, from: tick.from ?? was }))
  const remarks = [...(own.remarks ?? []), ...(other.remarks ?? [])]
  return {
    ticks: [...own.ticks, ...carried],
    comments: [...own.comments, ...other.comments],
    ...(remarks.length > 0 ? { remarks } : {}),
  }
}
