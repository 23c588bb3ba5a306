import type { BlockWorking, CalcWorking, Line, LookLine, SolveLine, Workings } from '../evaluation/workings.ts'
import type { Anchor } from './anchor.ts'

/** Where words that several places share stand in full: each answer is an earlier place, or nothing at the first. */
export interface FirstUses {
  /** The earlier block, of this module or another, that has told most of the cautions of this one and none that do not hold here. */
  readonly cautions: (block: CalcWorking) => CalcWorking | undefined
  /** The first block whose second method was worked, of the same module. */
  readonly second: (block: CalcWorking) => CalcWorking | undefined
  /** The first line that read from the same table, or used the same numerical method. */
  readonly line: (line: LookLine | SolveLine) => Anchor | undefined
}

/** The first uses in a package, in its own order. */
export function firstUses({ blocks }: Pick<Workings, 'blocks'>): FirstUses {
  const calcs = blocks.filter((block): block is CalcWorking => block.kind === 'calc')
  const seconds = firstOf(
    calcs.filter(({ second }) => second && !second.absent),
    ({ module }) => module,
  )
  const lines = firstOf(blocks.flatMap(linesOf).filter(isShared), sharedWords)
  const earlier = <T extends { readonly id: string }>(first: T | undefined, own: { readonly id: string }) =>
    first && first.id !== own.id ? first : undefined
  return {
    cautions: block => toldBefore(calcs, block),
    second: block => earlier(seconds.get(block.module), block),
    line: line => earlier(lines.get(sharedWords(line)), line),
  }
}

function toldBefore(calcs: readonly CalcWorking[], { id, cautions }: CalcWorking): CalcWorking | undefined {
  const own = calcs.findIndex(block => block.id === id)
  const told = calcs.slice(0, own).filter(before => before.cautions.every(one => cautions.includes(one)))
  const most = Math.max(1, ...told.map(before => before.cautions.length))
  return told.find(before => before.cautions.length === most)
}

function firstOf<T>(items: readonly T[], key: (item: T) => string): ReadonlyMap<string, T> {
  const first = new Map<string, T>()
  for (const item of items) if (!first.has(key(item))) first.set(key(item), item)
  return first
}

function linesOf(block: BlockWorking): readonly Line[] {
  if (block.kind === 'assume') return []
  return [...block.lines, ...(block.kind === 'calc' ? (block.second?.lines ?? []) : [])]
}

const isShared = (line: Line): line is LookLine | SolveLine => line.kind === 'look' || line.kind === 'solve'

/** What is printed in full once: a table's title and status, a method and what it does. */
function sharedWords(line: LookLine | SolveLine): string {
  return line.kind === 'look' ? `${line.title} ${line.status}` : `${line.title} ${line.method}`
}
