import type { Workings } from '../evaluation/workings.ts'
import { type BlockSteps, carryRenamed } from './carry-renamed.ts'
import type { CheckedStep } from './checked-step.ts'
import { type FromRenamed, fromRenamed } from './from-renamed.ts'
import { type Matched, matchEntries } from './match-entries.ts'
import { type CheckingRecord, type Comment, emptyBlock, type Tick } from './record.ts'
import { type NamedStep, namedSteps } from './step-name.ts'
import { stepResult } from './step-print.ts'

/** A tick or a comment at a step that is no longer in the package. */
export interface Gone {
  readonly block: string
  readonly entry: Tick | Comment
}

/** The record held against the package as it is now. */
export interface CheckingState {
  /** The record, with the entries of renamed blocks under their new names. */
  readonly record: CheckingRecord
  /** Every step, in the order of the package. */
  readonly steps: readonly CheckedStep[]
  readonly gone: readonly Gone[]
  /** Blocks in which ticks stand that were made under another name of them. */
  readonly renamed: readonly FromRenamed[]
  /** How many steps there are; with a standing tick; with fallen ticks alone. */
  readonly counts: { readonly steps: number; readonly checked: number; readonly fallen: number; readonly open: number }
}

/** Holds each tick against its step as it is printed now. */
export function checkingState(workings: Workings, kept: CheckingRecord): CheckingState {
  const blocks: BlockSteps = new Map(
    workings.blocks.flatMap(block => (block.kind === 'assume' ? [] : [[block.name, namedSteps(block)] as const])),
  )
  const record = carryRenamed(kept, blocks)
  const matched = new Map([...record].map(([name, entries]) => [name, matchEntries(entries, blocks.get(name) ?? [])]))
  const steps = [...blocks].flatMap(([block, own]) => {
    const found = matched.get(block) ?? matchEntries(emptyBlock, own)
    return own.map(step => checkedStep(block, step, found))
  })
  const gone = [...matched].flatMap(([block, found]) => found.gone.map(entry => ({ block, entry })))
  return { record, steps, gone, renamed: fromRenamed(steps), counts: countsOf({ record, steps, gone }) }
}

const checkedStep = (block: string, step: NamedStep, found: Matched): CheckedStep => ({
  block,
  key: step.key,
  name: step.name,
  line: step.line,
  now: stepResult(step.line),
  print: step.print,
  standing: found.standing.get(step) ?? [],
  fallen: found.fallen.get(step) ?? [],
  comments: found.comments.get(step) ?? [],
})

function countsOf({ record, steps, gone }: Pick<CheckingState, 'record' | 'steps' | 'gone'>): CheckingState['counts'] {
  const checked = steps.filter(({ standing }) => standing.length > 0).length
  const fallen = steps.filter(({ standing, fallen }) => standing.length === 0 && fallen.length > 0).length
  const lost = gone.filter(({ entry }) => 'of' in entry).length
  const open = [...record.values()].flatMap(({ comments }) => comments).filter(({ settled }) => !settled).length
  return { steps: steps.length, checked, fallen: fallen + lost, open }
}
