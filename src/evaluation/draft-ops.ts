import type { Compiled, Formula } from '../formula/types.ts'
import type { Draft } from './draft.ts'
import { entitiesOf } from './operands.ts'
import type { Op, Operands } from './plan-types.ts'
import { settled } from './settled.ts'

/** What an op touches, besides its guards. */
type Touches = Pick<Op, 'reads' | 'writes' | 'value' | 'solves'>

/** Adds something to do, only where every guard holds 1. */
export function pushOp(
  draft: Draft,
  { guards, second }: { guards: readonly number[]; second: boolean },
  { run, ...touches }: Touches & { readonly run: (slots: Float64Array) => void },
): void {
  const [first, ...more] = guards
  const about = { ...touches, second, reads: [...guards, ...touches.reads] }
  if (first === undefined) draft.ops.push({ ...about, run })
  else if (more.length === 0) draft.ops.push({ ...about, run: slots => slots[first] === 1 && run(slots) })
  else draft.ops.push({ ...about, run: slots => guards.every(guard => slots[guard] === 1) && run(slots) })
}

/** Adds a formula's value to what is to be done; NaN where it comes to no number. */
export function pushValue(
  draft: Draft,
  about: { guards: readonly number[]; second: boolean },
  value: { readonly slot: number } & Worked,
): void {
  const { slot, compiled } = value
  const run = (slots: Float64Array): void => {
    slots[slot] = settled(compiled(slots))
  }
  pushOp(draft, about, { ...touchesOf(value, { slot, guards: about.guards, truth: false }), run })
}

/** Adds a condition's truth to what is to be done: 1, 0, or NaN where an operand has no value. */
export function pushTruth(
  draft: Draft,
  about: { guards: readonly number[]; second: boolean },
  value: { readonly slot: number } & Worked,
): void {
  const { slot, compiled } = value
  const run = (slots: Float64Array): void => {
    slots[slot] = compiled(slots)
  }
  pushOp(draft, about, { ...touchesOf(value, { slot, guards: about.guards, truth: true }), run })
}

/** A formula made ready. */
interface Worked {
  readonly formula: Formula
  readonly operands: Operands
  readonly compiled: Compiled
}

const touchesOf = (
  { formula, operands }: Worked,
  about: { readonly slot: number; readonly guards: readonly number[]; readonly truth: boolean },
): Touches => ({ reads: slotsOf(operands), writes: [about.slot], value: { ...about, formula, operands } })

const slotsOf = (operands: Operands): readonly number[] => entitiesOf(operands).map(({ slot }) => slot)
