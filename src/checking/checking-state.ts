import { keyedLines } from '../evaluation/line-key.ts'
import type { BlockWorking, Line, Workings } from '../evaluation/workings.ts'
import { type CheckingRecord, type Comment, emptyBlock, type Tick } from './record.ts'
import { stepPrint, stepResult, type Vouched, vouched } from './step-print.ts'

/** A step of the package, as the record knows it. */
export interface CheckedStep {
  readonly block: string
  /** Key of the step within its block. */
  readonly key: string
  readonly line: Line
  /** Its result as printed now. */
  readonly now: string
  /** Ticks that stand: what they vouch for is printed as it was. */
  readonly standing: readonly Tick[]
  /** Ticks that fell, each with what has changed under it. */
  readonly fallen: readonly { readonly tick: Tick; readonly changed: readonly Vouched[] }[]
  readonly comments: readonly Comment[]
}

/** A tick or a comment at a step that is no longer in the package. */
export interface Gone {
  readonly block: string
  readonly entry: Tick | Comment
}

/** The record held against the package as it is now. */
export interface CheckingState {
  /** Every step, in the order of the package. */
  readonly steps: readonly CheckedStep[]
  readonly gone: readonly Gone[]
  /** How many steps there are; with a standing tick; with fallen ticks alone. */
  readonly counts: { readonly steps: number; readonly checked: number; readonly fallen: number; readonly open: number }
}

/** Holds each tick against its step as it is printed now. */
export function checkingState(workings: Workings, record: CheckingRecord): CheckingState {
  const blocks = workings.blocks.filter(block => block.kind !== 'assume')
  const steps = blocks.flatMap(block => blockSteps(block, record))
  const gone = goneOf(steps, record)
  const checked = steps.filter(({ standing }) => standing.length > 0).length
  const fallen = steps.filter(({ standing, fallen }) => standing.length === 0 && fallen.length > 0).length
  const lost = gone.filter(({ entry }) => 'of' in entry).length
  const open = [...record.values()].flatMap(({ comments }) => comments).filter(({ settled }) => !settled).length
  return { steps, gone, counts: { steps: steps.length, checked, fallen: fallen + lost, open } }
}

function blockSteps(block: Exclude<BlockWorking, { kind: 'assume' }>, record: CheckingRecord): CheckedStep[] {
  const { ticks, comments } = record.get(block.name) ?? emptyBlock
  return [...keyedLines(block)].map(([key, line]) => {
    const now = stepPrint(line)
    const judged = ticks
      .filter(({ step }) => step === key)
      .map(tick => ({ tick, changed: vouched.filter(part => tick.of[part] !== now[part]) }))
    return {
      block: block.name,
      key,
      line,
      now: stepResult(line),
      standing: judged.filter(({ changed }) => changed.length === 0).map(({ tick }) => tick),
      fallen: judged.filter(({ changed }) => changed.length > 0),
      comments: comments.filter(({ step }) => step === key),
    }
  })
}

function goneOf(steps: readonly CheckedStep[], record: CheckingRecord): Gone[] {
  const there = new Set(steps.map(({ block, key }) => JSON.stringify([block, key])))
  return [...record].flatMap(([block, { ticks, comments }]) =>
    [...ticks, ...comments]
      .filter(({ step }) => !there.has(JSON.stringify([block, step])))
      .map(entry => ({ block, entry })),
  )
}

/** What a new tick at the step vouches for, as printed now. */
export const tickOf = ({ key, line }: CheckedStep, { by, on }: { by: string; on: string }): Tick => ({
  step: key,
  by,
  on,
  as: stepResult(line),
  of: stepPrint(line),
})
