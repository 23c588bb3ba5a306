import { type CheckedStep, tickOf } from './checked-step.ts'
import type { CheckingState, Gone } from './checking-state.ts'
import { type BlockRecord, type CheckingRecord, type Comment, emptyBlock, type Signed, type Tick } from './record.ts'

type Asked = { readonly steps: readonly CheckedStep[]; readonly signed: Signed }

const change = (record: CheckingRecord, block: string, to: (old: BlockRecord) => BlockRecord): CheckingRecord =>
  new Map(record).set(block, to(record.get(block) ?? emptyBlock))

const each = (
  record: CheckingRecord,
  steps: readonly CheckedStep[],
  to: (old: BlockRecord, step: CheckedStep) => BlockRecord,
): CheckingRecord => steps.reduce((now, step) => change(now, step.block, old => to(old, step)), record)

const ticksAt = ({ standing, fallen }: CheckedStep): readonly Tick[] => [...standing, ...fallen.map(({ tick }) => tick)]

/** A checker's own ticks at a step. */
const ownTicks = (step: CheckedStep, { by }: { readonly by: string }): readonly Tick[] =>
  ticksAt(step).filter(tick => tick.by === by)

/** The record with a tick of this checker at each step, in the package's order; an earlier tick of the same checker there gives way. */
export function addTicks({ record, steps: all }: CheckingState, { steps, signed }: Asked): CheckingRecord {
  const places = new Map<Tick, number>()
  all.forEach((step, index) => {
    for (const tick of ticksAt(step)) places.set(tick, index)
  })
  const added = each(record, steps, (old, step) => {
    const own = ownTicks(step, signed)
    const tick = renewed(step, own, signed)
    places.set(tick, all.indexOf(step))
    return { ...old, ticks: [...old.ticks.filter(each => !own.includes(each)), tick] }
  })
  const at = (tick: Tick): number => places.get(tick) ?? all.length
  return new Map(
    [...added].map(([block, old]) => [block, { ...old, ticks: [...old.ticks].sort((a, b) => at(a) - at(b)) }]),
  )
}

/** A new tick, with what somebody remarked by hand at the one that gives way. */
function renewed(step: CheckedStep, own: readonly Tick[], signed: Signed): Tick {
  const remarks = own.flatMap(tick => tick.remarks ?? [])
  return { ...tickOf(step, signed), ...(remarks.length > 0 ? { remarks } : {}) }
}

/** The record without this checker's ticks at the steps. */
export const removeTicks = (
  { record }: CheckingState,
  { steps, by }: { readonly steps: readonly CheckedStep[]; readonly by: string },
): CheckingRecord =>
  each(record, steps, (old, step) => {
    const own = ownTicks(step, { by })
    return { ...old, ticks: old.ticks.filter(tick => !own.includes(tick)) }
  })

/** The record with an open comment at each step. */
export const addComment = (
  { record }: CheckingState,
  { steps, signed, says }: Asked & { readonly says: string },
): CheckingRecord =>
  each(record, steps, (old, { name }) => ({ ...old, comments: [...old.comments, { ...name, ...signed, says }] }))

/** The record with every open comment at the steps settled by this answer. */
export const settleComments = (
  { record }: CheckingState,
  { steps, signed, says }: Asked & { readonly says: string },
): CheckingRecord =>
  each(record, steps, (old, { comments }) => ({
    ...old,
    comments: old.comments.map(
      (comment): Comment =>
        comments.includes(comment) && !comment.settled ? { ...comment, settled: { ...signed, says } } : comment,
    ),
  }))

/** The state without the ticks whose steps are gone. Comments stay: what was asked is not lost. */
export const dropGone = (state: CheckingState, gone: readonly Gone[]): CheckingState => ({
  ...state,
  record: gone.reduce(
    (now, { block, entry }) => change(now, block, old => ({ ...old, ticks: old.ticks.filter(tick => tick !== entry) })),
    state.record,
  ),
})
