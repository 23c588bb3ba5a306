import { attribute, type Numbers, type Packets } from './attribute.ts'
import type { PrintedLine } from './printed-lines.ts'
import type { IdentifiedEdit, Reached } from './recheck.ts'
import type { Attribution } from './types.ts'

interface MovingSide {
  readonly lines: readonly PrintedLine[]
  readonly numbers: Numbers
  /** The shared key of one of its own. */
  readonly key: (key: string) => string
}

/** What is needed to say what moved, and by what. */
export interface Moving {
  readonly old: MovingSide
  readonly now: MovingSide
  readonly packets: Packets
  readonly reached: Reached
}

/** By what a number moved that both notebooks have; nothing where it did not, or where that cannot be told. */
export function movedBy(
  { old, now, packets, reached }: Moving,
  about: { readonly node: string; readonly of: (numbers: Numbers) => number },
): Attribution | undefined {
  const ends = { old: about.of(old.numbers), now: about.of(now.numbers) }
  if (!Number.isFinite(ends.now - ends.old) || ends.now === ends.old) return undefined
  const reaches = ({ id }: IdentifiedEdit): boolean => reached.get(id)?.has(about.node) === true
  const by = { of: about.of, reaches }
  return attribute(ends, { packets: packets.packets, ...by }) ?? attribute(ends, { packets: packets.grouped(), ...by })
}
