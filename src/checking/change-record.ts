import { type CheckedStep, type Gone, tickOf } from './checking-state.ts'
import { type BlockRecord, type CheckingRecord, type Comment, emptyBlock, type Signed, type Tick } from './record.ts'

const change = (record: CheckingRecord, block: string, to: (old: BlockRecord) => BlockRecord): CheckingRecord =>
  new Map(record).set(block, to(record.get(block) ?? emptyBlock))

const each = (
  record: CheckingRecord,
  steps: readonly CheckedStep[],
  to: (old: BlockRecord, step: CheckedStep) => BlockRecord,
): CheckingRecord => steps.reduce((now, step) => change(now, step.block, old => to(old, step)), record)

/** The record with a tick of this checker at each step, in the package's order; an earlier tick of the same checker there gives way. */
export function addTicks(
  record: CheckingRecord,
  { steps, all, signed }: { steps: readonly CheckedStep[]; all: readonly CheckedStep[]; signed: Signed },
): CheckingRecord {
  const place = new Map(all.map(({ block, key }, index) => [`${block}\n${key}`, index]))
  const added = each(record, steps, (old, step) => ({
    ...old,
    ticks: [...old.ticks.filter(tick => !isOf(tick, step, signed)), renewed(old, step, signed)],
  }))
  return new Map(
    [...added].map(([block, old]) => {
      const at = ({ step }: { step: string }): number => place.get(`${block}\n${step}`) ?? all.length
      return [block, { ...old, ticks: [...old.ticks].sort((a, b) => at(a) - at(b)) }]
    }),
  )
}

const isOf = ({ step, by }: Tick, { key }: CheckedStep, signed: { readonly by: string }): boolean =>
  step === key && by === signed.by

/** A new tick, with what somebody remarked by hand at the one that gives way. */
function renewed({ ticks }: BlockRecord, step: CheckedStep, signed: Signed): Tick {
  const remarks = ticks.filter(tick => isOf(tick, step, signed)).flatMap(tick => tick.remarks ?? [])
  return { ...tickOf(step, signed), ...(remarks.length > 0 ? { remarks } : {}) }
}

/** The record without this checker's ticks at the steps. */
export const removeTicks = (
  record: CheckingRecord,
  { steps, by }: { steps: readonly CheckedStep[]; by: string },
): CheckingRecord =>
  each(record, steps, (old, { key }) => ({
    ...old,
    ticks: old.ticks.filter(tick => tick.step !== key || tick.by !== by),
  }))

/** The record with an open comment at each step. */
export const addComment = (
  record: CheckingRecord,
  { steps, signed, says }: { steps: readonly CheckedStep[]; signed: Signed; says: string },
): CheckingRecord =>
  each(record, steps, (old, { key }) => ({ ...old, comments: [...old.comments, { step: key, ...signed, says }] }))

/** The record with every open comment at the steps settled by this answer. */
export function settleComments(
  record: CheckingRecord,
  { steps, signed, says }: { steps: readonly CheckedStep[]; signed: Signed; says: string },
): CheckingRecord {
  const settled = (comment: Comment, key: string): Comment =>
    comment.step !== key || comment.settled ? comment : { ...comment, settled: { ...signed, says } }
  return each(record, steps, (old, { key }) => ({
    ...old,
    comments: old.comments.map(comment => settled(comment, key)),
  }))
}

/** The record without the ticks whose steps are gone. Comments stay: what was asked is not lost. */
export const dropGone = (record: CheckingRecord, gone: readonly Gone[]): CheckingRecord =>
  gone.reduce(
    (now, { block, entry }) => change(now, block, old => ({ ...old, ticks: old.ticks.filter(tick => tick !== entry) })),
    record,
  )
