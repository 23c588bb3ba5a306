import { addComment, addTicks, dropGone, removeTicks, settleComments } from '../checking/change-record.ts'
import type { CheckedStep } from '../checking/checked-step.ts'
import type { CheckingState } from '../checking/checking-state.ts'
import type { CheckingRecord, Signed } from '../checking/record.ts'
import { plural } from './count-of.ts'
import { exitStatus } from './exit-status.ts'
import { plainWords } from './plain-words.ts'
import { Stopped } from './stopped.ts'
import type { TickOptions } from './tick-options.ts'

interface Change {
  readonly state: CheckingState
  readonly steps: readonly CheckedStep[]
  readonly signed: Signed
  readonly options: TickOptions
}

/** The record as it was asked to be, and what was done. Refuses what would do nothing. */
export function changedRecord(change: Change): { readonly record: CheckingRecord; readonly did: string } {
  const { remove, comment, settle } = change.options
  if ([remove === true, comment !== undefined, settle !== undefined].filter(Boolean).length > 1)
    throw called('Give one of `--remove`, `--comment` and `--settle`')
  if (comment !== undefined) return commented(change, wordsOf('--comment', comment))
  if (settle !== undefined) return settled(change, wordsOf('--settle', settle))
  return remove ? removed(change) : ticked(change)
}

type Changed = ReturnType<typeof changedRecord>

function wordsOf(option: string, typed: string): string {
  const words = plainWords(typed)
  if (words !== undefined) return words
  throw called(
    typed.trim() === '' ? `\`${option}\` says nothing` : `\`${option}\` holds a character that cannot be printed`,
  )
}

function commented({ state, steps, signed }: Change, says: string): Changed {
  return { record: addComment(state, { steps, signed, says }), did: did(steps, 'commented on') }
}

function settled({ state, steps, signed }: Change, says: string): Changed {
  const open = steps.filter(({ comments }) => comments.some(comment => !comment.settled))
  if (open.length === 0) throw called('No comment is open at these steps')
  return { record: settleComments(state, { steps, signed, says }), did: did(open, 'settled') }
}

function removed(change: Change): Changed {
  const { steps, signed } = change
  const isOwn = ({ by }: Signed): boolean => by === signed.by
  const own = steps.filter(({ standing, fallen }) => standing.some(isOwn) || fallen.some(({ tick }) => isOwn(tick)))
  const gone = goneOf(change)
  if (own.length + gone.length === 0)
    throw called(`${signed.by} has no tick at these steps`, 'A name is known as it is written in the record')
  const left = removeTicks(dropGone(change.state, gone), { steps, by: signed.by })
  const lost = gone.length === 0 ? '' : `, ${plural(gone.length, 'tick')} of steps that are gone taken away`
  return { record: left, did: `${did(own, 'unticked')}${lost}` }
}

const ticked = (change: Change): Changed => ({
  record: addTicks(dropGone(change.state, goneOf(change)), change),
  did: did(change.steps, 'ticked'),
})

/** Ticks of this name in the blocks of the steps whose own steps are gone. */
const goneOf = ({ state, steps, signed }: Change): CheckingState['gone'] =>
  state.gone.filter(
    ({ block, entry }) => 'of' in entry && entry.by === signed.by && steps.some(step => step.block === block),
  )

const did = (steps: readonly CheckedStep[], what: string): string => `${plural(steps.length, 'step')} ${what}`

const called = (says: string, help?: string): Stopped => new Stopped(exitStatus.called, says, help)
