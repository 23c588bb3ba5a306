import type { CheckLine, Line } from '../evaluation/workings.ts'
import type { Shown } from '../quantity/types.ts'
import { attribute, type Numbers, noise, type Packets } from './attribute.ts'
import { lineText } from './line-text.ts'
import type { PrintedLine } from './printed-lines.ts'
import { type IdentifiedEdit, type Reached, spotOf } from './recheck.ts'
import type { Attribution, CheckMove, CheckState, ResultMove, Turn } from './types.ts'

/** What is needed to say what moved, and by what. */
export interface Moving {
  readonly old: { readonly lines: readonly PrintedLine[]; readonly numbers: Numbers }
  readonly now: { readonly lines: readonly PrintedLine[]; readonly numbers: Numbers }
  readonly packets: Packets
  readonly reached: Reached
  readonly key: (key: string) => string
}

type CheckPrinted = PrintedLine & { readonly line: CheckLine }
const isCheck = (printed: PrintedLine): printed is CheckPrinted => printed.line.kind === 'check'

/** Every check of both notebooks in the new one's order: those that turned to not satisfied first, then those that turned to satisfied. */
export function checkMoves(moving: Moving): CheckMove[] {
  const before = new Map(moving.old.lines.filter(isCheck).map(each => [each.id, each]))
  const checks = moving.now.lines.filter(isCheck)
  const after = new Set(checks.map(({ id }) => id))
  const moves = checks.map(each => checkMove(moving, before.get(each.id), each))
  const gone = [...before.values()].filter(({ id }) => !after.has(id)).map(each => checkMove(moving, each, undefined))
  const rank: readonly Turn[] = ['turned to not satisfied', 'turned to satisfied']
  const order = ({ turn }: CheckMove): number => (rank.includes(turn) ? rank.indexOf(turn) : rank.length)
  return [...moves, ...gone].toSorted((a, b) => order(a) - order(b))
}

function checkMove(moving: Moving, old: CheckPrinted | undefined, now: CheckPrinted | undefined): CheckMove {
  const shown = now ?? old
  if (!shown) throw new Error('a check stands in one of the notebooks')
  const moved = old && now ? ratioMoved(moving, shown.node) : undefined
  return {
    ...spotOf(shown),
    turn: turnOf(old?.line, now?.line),
    ...(old ? { old: stateOf(old.line) } : {}),
    ...(now ? { now: stateOf(now.line) } : {}),
    differs: !old || !now || lineText(old.line) !== lineText(now.line),
    ...(moved ? { moved } : {}),
  }
}

function turnOf(old: CheckLine | undefined, now: CheckLine | undefined): Turn {
  if (!old) return 'added'
  if (!now) return 'removed'
  if (old.satisfied === now.satisfied) return 'as before'
  return now.satisfied ? 'turned to satisfied' : 'turned to not satisfied'
}

const stateOf = ({ satisfied, doubts, ratio, demand, capacity }: CheckLine): CheckState => ({
  satisfied,
  doubts: satisfied ? doubts : [],
  ...(ratio ? { ratio: { value: ratio.value, digits: ratio.shown.digits } } : {}),
  ...(demand ? { demand } : {}),
  ...(capacity ? { capacity } : {}),
})

const ratioMoved = (moving: Moving, check: string): Attribution | undefined =>
  movedBy(moving, { node: check, of: numbers => numbers.ratio(check) })

function movedBy(
  { old, now, packets, reached }: Moving,
  about: { readonly node: string; readonly of: (numbers: Numbers) => number },
): Attribution | undefined {
  const ends = { old: about.of(old.numbers), now: about.of(now.numbers) }
  if (!Number.isFinite(ends.now - ends.old) || ends.now === ends.old) return undefined
  const reaches = ({ id }: IdentifiedEdit): boolean => reached.get(id)?.has(about.node) === true
  const by = { of: about.of, reaches }
  return attribute(ends, { packets: packets.packets, ...by }) ?? attribute(ends, { packets: packets.grouped(), ...by })
}

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
  const before = new Map(resultsOf(moving, moving.old.lines).map(each => [each.id, each]))
  const now = resultsOf(moving, moving.now.lines)
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

const resultsOf = ({ key }: Moving, lines: readonly PrintedLine[]): Result[] =>
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
