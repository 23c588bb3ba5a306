import type { Compiled, Formula } from '../formula/types.ts'
import type { Draft } from './draft.ts'
import { entitiesOf } from './operands.ts'
import type { Op, Operands } from './plan-types.ts'
import { settled } from './settled.ts'

/** Where an op stands. */
interface Under {
  readonly guards: readonly number[]
  readonly second: boolean
}

/** Adds something to do, only where every guard holds 1. */
export function pushOp(
  draft: Draft,
  { guards, second }: Under,
  { run, ...touches }: Omit<Op, 'guards' | 'second'>,
): void {
  const [first, ...more] = guards
  const about = { ...touches, guards, second, reads: [...guards, ...touches.reads] }
  if (first === undefined) draft.ops.push({ ...about, run })
  else if (more.length === 0) draft.ops.push({ ...about, run: slots => slots[first] === 1 && run(slots) })
  else draft.ops.push({ ...about, run: slots => guards.every(guard => slots[guard] === 1) && run(slots) })
}

/** Adds a formula's value to what is to be done; NaN where it comes to no number. */
export const pushValue = (draft: Draft, under: Under, worked: Worked): void => pushWorked(draft, under, worked, false)

/** Adds a condition's truth to what is to be done: 1, 0, or NaN where an operand has no value. */
export const pushTruth = (draft: Draft, under: Under, worked: Worked): void => pushWorked(draft, under, worked, true)

/** A truth is not settled. */
function pushWorked(draft: Draft, under: Under, worked: Worked, truth: boolean): void {
  const { slot, formula, operands, compiled } = worked
  const run = truth
    ? (slots: Float64Array): void => {
        slots[slot] = compiled(slots)
      }
    : (slots: Float64Array): void => {
        slots[slot] = settled(compiled(slots))
      }
  const does = { kind: 'value', slot, formula, operands, truth } as const
  const reads = entitiesOf(operands).map(entity => entity.slot)
  pushOp(draft, under, { reads, writes: [slot], does, run })
}

/** Adds a bound that stops its method: 0 goes into `alive` where the number in the slot does not keep it. */
export function pushStop(
  draft: Draft,
  under: Under,
  { slot, keeps, alive }: { slot: number; keeps: (si: number) => boolean; alive: number },
): void {
  const run = (slots: Float64Array): void => {
    if (!keeps(slots[slot] ?? Number.NaN)) slots[alive] = 0
  }
  pushOp(draft, under, { reads: [slot], writes: [alive], does: { kind: 'stop', slot, keeps, alive }, run })
}

/** Adds that what stands in `slots` is taken back where `alive` does not hold 1. */
export function pushForget(draft: Draft, second: boolean, about: { alive: number; slots: readonly number[] }): void {
  const { alive, slots: written } = about
  const run = (slots: Float64Array): void => {
    if (slots[alive] !== 1) for (const slot of written) slots[slot] = Number.NaN
  }
  const does = { kind: 'forget', ...about } as const
  pushOp(draft, { guards: [], second }, { reads: [alive], writes: written, does, run })
}

/** A formula made ready, and the slot its number goes to. */
interface Worked {
  readonly slot: number
  readonly formula: Formula
  readonly operands: Operands
  readonly compiled: Compiled
}
