import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { placeWithin } from '../diagnostic/place-within.ts'
import { compile } from '../formula/compile.ts'
import { prove } from '../formula/prove.ts'
import { readFormula } from '../formula/read-formula.ts'
import type { Compiled, Fault, Formula, Kind, Seat } from '../formula/types.ts'
import type { Notebook, Written } from '../notebook/types.ts'
import { dimensionByName } from '../quantity/dimension-names.ts'
import { displayPoint, displayUnit } from '../quantity/display-unit.ts'
import type { Dimension, System, Unit } from '../quantity/types.ts'
import { unitOf } from '../quantity/unit.ts'
import type {
  Entity,
  Named,
  Op,
  Operands,
  PlannedBlock,
  PlannedInput,
  PlannedLine,
  PlannedRange,
  Points,
} from './plan-types.ts'
import { settled } from './settled.ts'

/** A plan while it is being made. */
export interface Draft {
  readonly notebook: Notebook
  readonly system: System
  readonly start: number[]
  readonly ops: Op[]
  readonly blocks: (PlannedBlock | undefined)[]
  /** Lines of work blocks by the index of the block, each with its place in the author's order. */
  readonly statements: Map<number, { readonly index: number; readonly line: PlannedLine }[]>
  readonly names: Map<string, Named>
  readonly broken: Map<string, Diagnostic>
  /** Blocks of which a part was not read: what nothing gives may stand there. */
  readonly lost: ReadonlyMap<string, Diagnostic>
  readonly ranges: PlannedRange[]
  /** Every line in the order of evaluation. */
  readonly trail: PlannedLine[]
  readonly diagnostics: Diagnostic[]
  /** How many values each fault has stopped. */
  readonly stopped: Map<Diagnostic, number>
  /** Names that nothing has, each with the block it was looked for in: the nearest is found when all names are known. */
  readonly unknown: Map<Diagnostic, { readonly name: string; readonly block: string }>
  /** Inputs of calc blocks by key: `roof.short_span`. */
  readonly inputs: Map<string, PlannedInput>
  /** Formulas of modules, read once. */
  readonly formulas: Map<string, Formula>
}

export const newDraft = (notebook: Notebook, lost: ReadonlyMap<string, Diagnostic>): Draft => ({
  notebook,
  system: notebook.title.units,
  start: [],
  ops: [],
  blocks: notebook.blocks.map(() => undefined),
  statements: new Map(),
  names: new Map(),
  broken: new Map(),
  lost,
  ranges: [],
  trail: [],
  diagnostics: [],
  stopped: new Map(),
  unknown: new Map(),
  inputs: new Map(),
  formulas: new Map(),
})

/** A new slot; NaN stands for "not evaluated". */
export function newSlot(draft: Draft, value = Number.NaN): number {
  return draft.start.push(value) - 1
}

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

/** A formula of a module's own text. Throws where it cannot be read: our own bug. */
export function ownFormula(draft: Draft, text: string): Formula {
  const known = draft.formulas.get(text)
  if (known) return known
  const read = readFormula(text)
  if (!read.ok) throw new Error(`formula \`${text}\`: ${read.fault.says}`)
  draft.formulas.set(text, read.formula)
  return read.formula
}

/** A dimension by the name a module uses. Throws where there is none: our own bug. */
export function ownDimension(name: string): Dimension {
  const dimension = dimensionByName(name)
  if (!dimension) throw new Error(`no dimension is called \`${name}\``)
  return dimension
}

interface ResultAbout {
  readonly dimension: Dimension
  /** A temperature on a scale. */
  readonly point?: boolean | undefined
  readonly choice?: { readonly SI: string; readonly US: string } | undefined
  readonly to?: Unit | undefined
}

/** The unit of a result: the formula's `to`, the module's choice, or the system's. */
export function resultUnit({ system }: Draft, { dimension, point, choice, to }: ResultAbout): Unit {
  if (to) return to
  if (choice) return unitOf(choice[system])
  return point ? displayPoint(system) : displayUnit(dimension, system)
}

/** What a name of a formula stands for in one scope. */
export type Find = (name: string) => Entity | readonly Entity[] | Points | undefined

const kindOf = (found: Entity | readonly Entity[] | Points): Kind => {
  if ('kind' in found) {
    if (found.kind === 'points') return { kind: 'table', ...found.kinds }
    return kindOfEntity('value', found)
  }
  const first = found[0]
  if (!first) throw new Error('a list without rows cannot be used')
  return kindOfEntity('list', first)
}

const kindOfEntity = (kind: 'value' | 'list', { dimension, point }: Entity): Kind => ({ kind, dimension, point })

export const seatOf = (found: Entity | readonly Entity[] | Points): Seat => {
  if ('kind' in found) {
    return found.kind === 'points' ? { kind: 'table', x: found.x, y: found.y } : { kind: 'slot', slot: found.slot }
  }
  return { kind: 'slots', slots: found.map(entity => entity.slot) }
}

/** The operands of a formula, all of which are known. */
export function operandsOf(formula: Formula, find: Find): Operands {
  const operands = new Map<string, Entity | readonly Entity[] | Points>()
  for (const name of formula.names) {
    const found = find(name)
    if (!found) throw new Error(`formula \`${formula.text}\`: nothing is called \`${name}\``)
    operands.set(name, found)
  }
  return operands
}

/** Dimension faults of a formula in a scope, in the units of the notebook's system, or its result. */
export const proveIn = ({ system }: Pick<Draft, 'system'>, formula: Formula, find: Find) =>
  prove(
    formula,
    name => {
      const found = find(name)
      return found && kindOf(found)
    },
    { system },
  )

/** The formula as a plain function over the slots. */
export const compileIn = (formula: Formula, find: Find) =>
  compile(formula, name => {
    const found = find(name)
    if (!found) throw new Error(`formula \`${formula.text}\`: nothing is called \`${name}\``)
    return seatOf(found)
  })

/** All entities among the operands, lists opened. */
export function entitiesOf(operands: Operands): Entity[] {
  return [...operands.values()].flatMap(found => {
    if (!('kind' in found)) return [...found]
    return found.kind === 'points' ? [] : [found]
  })
}

/** A fault in a formula as a message at the author's characters. */
export function faultAt(fault: Fault, written: Written): Diagnostic {
  const { rule, says, help, span } = fault
  const place: Place = written.exact === false ? written.place : placeWithin(written.place, span)
  return { rule, severity: 'error', place, says, ...(help ? { help } : {}) }
}

/** Reports a fault and marks a key as impossible to plan. */
export function breakKey(draft: Draft, key: string, fault: Diagnostic): void {
  draft.diagnostics.push(fault)
  draft.broken.set(key, fault)
}

/** Marks a key as stopped by an earlier fault, without a message of its own. */
export function stopKey(draft: Draft, key: string, cause: Diagnostic): void {
  draft.broken.set(key, cause)
  draft.stopped.set(cause, (draft.stopped.get(cause) ?? 0) + 1)
}
