import type { Workings } from '../evaluation/workings.ts'
import type { VerdictMove } from './types.ts'

interface Verdict {
  readonly what: VerdictMove['what']
  readonly block: string
  readonly says: string
  readonly holds: boolean
}

/** Limits, second methods and plausible ranges whose verdict turned, came or went; `oldBlock` and `oldKey` give the old names. */
export function verdictMoves(old: Workings, now: Workings, oldKey: (key: string) => string): VerdictMove[] {
  const id = ({ what, block, says }: Verdict, key: (key: string) => string): string =>
    [what, key(block), says].join('\n')
  const before = new Map(verdictsOf(old).map(each => [id(each, key => key), each]))
  const after = verdictsOf(now).map(each => [id(each, oldKey), each] as const)
  const known = new Set(after.map(([key]) => key))
  const moves = after.flatMap(([key, verdict]) => moveOf(before.get(key), verdict))
  const gone = [...before].filter(([key]) => !known.has(key)).flatMap(([, verdict]) => moveOf(verdict, undefined))
  return [...moves, ...gone]
}

/** A verdict that is as good as before is not news, nor is one that came or went and is good. */
function moveOf(old: Verdict | undefined, now: Verdict | undefined): VerdictMove[] {
  const shown = now ?? old
  if (!shown || (old?.holds ?? true) === (now?.holds ?? true)) return []
  const { what, block, says } = shown
  return [{ what, block, says, ...(old ? { old: old.holds } : {}), ...(now ? { now: now.holds } : {}) }]
}

function verdictsOf({ blocks }: Workings): Verdict[] {
  return blocks.flatMap((block): Verdict[] => {
    if (block.kind === 'assume')
      return block.rows.flatMap(({ name, range }) =>
        range
          ? { what: 'range', block: `${block.name}.${name}`, says: 'inside its plausible range', holds: range.inside }
          : [],
      )
    if (block.kind !== 'calc') return []
    const limits = block.limits.map(({ says, kept }) => ({
      what: 'limit' as const,
      block: block.name,
      says,
      holds: kept,
    }))
    const compared = (block.second?.comparisons ?? []).map(({ says, agrees }) => ({
      what: 'second method' as const,
      block: block.name,
      says,
      holds: agrees,
    }))
    return [...limits, ...compared]
  })
}
