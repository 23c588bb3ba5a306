import type { CheckLine } from '../evaluation/workings.ts'
import { lineText } from './line-text.ts'
import { type Moving, movedBy } from './moved-by.ts'
import type { PrintedLine } from './printed-lines.ts'
import { spotOf } from './recheck.ts'
import type { Attribution, CheckMove, CheckState, Turn } from './types.ts'

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
