import type {
  CarriedStep,
  Condition,
  EachStep,
  FormulaStep,
  Input,
  Module,
  PairsStep,
  Step,
  TakeStep,
  WhenStep,
} from '../modules/module.ts'
import { newSlot } from './draft.ts'
import { pushOp, pushValue } from './draft-ops.ts'
import {
  addLine,
  declare,
  findIn,
  inputKey,
  judge,
  type ListRow,
  moduleFault,
  newScope,
  type Stage,
  soundStep,
  truthOf,
  wordIn,
} from './module-scope.ts'
import { planCheck } from './plan-check.ts'
import { planLook } from './plan-look.ts'
import { planSolve } from './plan-solve.ts'
import type { Entity, PlannedBranch, PlannedFormula } from './plan-types.ts'
import { stepByStep } from './step-by-step.ts'

/** Plans steps in the order of the book: each proved, given its slot, its line and what to do when numbers are known. */
export function planSteps(stage: Stage, steps: readonly Step[]): void {
  for (const step of steps) planStep(stage.row ? { ...stage, step } : stage, step)
}

function planStep(stage: Stage, step: Step): void {
  switch (step.kind) {
    case 'step':
      planFormula(stage, step)
      return
    case 'look':
      planLook(stage, step)
      return
    case 'each':
      planEach(stage, step)
      return
    case 'pairs':
      planPairs(stage, step)
      return
    case 'carried':
      planCarried(stage, step)
      return
    case 'take':
      planTake(stage, step)
      return
    case 'when':
      planWhen(stage, step)
      return
    case 'solve':
      planSolve(stage, step)
      return
    case 'check':
      planCheck(stage, { ...step, place: stage.place })
      return
  }
}

/** One formula line. */
function planFormula(stage: Stage, step: Omit<FormulaStep, 'kind'>): Entity {
  const sound = soundStep(stage, step.formula)
  if (sound.result.kind !== 'value') throw moduleFault(stage, `\`${step.name}\` is not a number`)
  const { formula, operands, compiled } = sound
  const { dimension, point } = sound.result
  const gives = declare(stage, { ...step, dimension, point, to: formula.to })
  pushValue(stage.draft, stage, { slot: gives.slot, formula, operands, compiled })
  const { guards, place, row } = stage
  const { says, source } = step
  const line: PlannedFormula = {
    kind: 'formula',
    gives,
    formula,
    operands,
    compiled,
    guards,
    says,
    place,
    ...(source ? { source } : {}),
    ...(row ? { row } : {}),
  }
  addLine(stage, line)
  return gives
}

function planEach(stage: Stage, step: EachStep): void {
  planRows(stage, step, rowsOf(stage, step.list))
  gatherRows(stage, step.list)
}

/** Planned row by row, as they are evaluated; printed step by step. */
function planRows(stage: Stage, { steps }: EachStep | PairsStep, rows: readonly ListRow[]): void {
  const from = stage.lines.length
  for (const { scope, row } of rows) planSteps({ ...stage, scope, row }, steps)
  stage.lines.push(...stepByStep(stage.lines.splice(from), steps))
}

function rowsOf(stage: Stage, list: string): readonly ListRow[] {
  const rows = stage.scope.lists.get(list)
  if (!rows) throw moduleFault(stage, `no list is called \`${list}\``)
  return rows
}

/** Steps between neighbouring rows: they are planned in the later row, which finds the earlier one by `prev_`. */
function planPairs(stage: Stage, step: PairsStep): void {
  const [first, ...later] = rowsOf(stage, step.list)
  if (!first || later.length === 0) throw moduleFault(stage, `\`${step.list}\` has no two rows`)
  planRows(stage, step, later)
  const between = [...(later[0]?.scope.names.keys() ?? [])].filter(name => !first.scope.names.has(name))
  gather(stage, { list: step.list, scopes: later, names: between })
}

/** Every number that all rows have, as a list in the outer scope: `layers.x`. */
export function gatherRows(stage: Stage, list: string): void {
  const scopes = rowsOf(stage, list)
  gather(stage, { list, scopes, names: scopes[0]?.scope.names.keys() ?? [] })
}

function gather(
  stage: Stage,
  { list, scopes, names }: { list: string; scopes: readonly ListRow[]; names: Iterable<string> },
): void {
  for (const name of names) {
    const entities = scopes
      .map(({ scope }) => scope.names.get(name))
      .filter(found => found !== undefined && 'kind' in found)
    if (entities.length !== scopes.length) continue
    stage.scope.names.set(`${list}.${name}`, entities)
    const { block, place } = stage
    const key = `${stage.blockName}.${name}`
    if (!stage.draft.names.has(key)) stage.draft.names.set(key, { kind: 'rows', key, name, block, entities, place })
  }
}

function planCarried(stage: Stage, step: CarriedStep): void {
  const { before } = stage.scope
  if (!before) {
    planFormula(stage, { ...step, formula: step.first })
    return
  }
  const last = before.names.get(step.next)
  if (!last || !('kind' in last))
    throw moduleFault(stage, `\`${step.name}\` carries \`${step.next}\`, which the rows do not have`)
  planHanded(stage, { ...step, from: last })
}

function planTake(stage: Stage, step: TakeStep): void {
  const rows = findIn(stage.scope, `${step.list}.${step.of}`)
  const from = rows && !('kind' in rows) ? rows.at(step.from === 'first' ? 0 : -1) : undefined
  if (!from) throw moduleFault(stage, `\`${step.name}\` takes \`${step.of}\`, which no row of \`${step.list}\` has`)
  planHanded(stage, { ...step, from })
}

/** A value handed on unchanged: its formula is the other value's name. */
function planHanded(stage: Stage, step: Omit<TakeStep | CarriedStep, 'kind'> & { from: Entity; name: string }): void {
  const scope = newScope(stage.scope)
  scope.names.set(step.from.name, step.from)
  const sound = soundStep({ ...stage, scope }, step.from.name)
  const { formula, operands, compiled } = sound
  const gives = declare(stage, {
    ...step,
    dimension: step.from.dimension,
    point: step.from.point,
    same: step.from,
    to: step.unit ? undefined : step.from.unit,
  })
  pushValue(stage.draft, stage, { slot: gives.slot, formula, operands, compiled })
  const { guards, place, row } = stage
  addLine(stage, {
    kind: 'formula',
    gives,
    formula,
    operands,
    compiled,
    guards,
    says: step.says,
    place,
    ...(row ? { row } : {}),
  })
}

function planWhen(stage: Stage, step: WhenStep): void {
  const { condition, says } = step
  const { guards, place, row } = stage
  const rows = row ? { row } : {}
  if (!('formula' in condition)) {
    const judged = judge(stage, condition)
    const holds = 'known' in judged && judged.known
    const side = holds ? step.yes : step.no
    if (side.length === 0) return
    const because = chosenWords(stage, condition, holds)
    const by = inputKey(stage, 'given' in condition ? condition.given : condition.choice)
    // One word of several: only the one that holds is worth a line.
    const asksOn = !holds && side.every(next => next.kind === 'when' && 'choice' in next.condition)
    if (says !== undefined && !asksOn)
      addLine(stage, { kind: 'branch', chosen: { holds, because, by }, guards, says, place, ...rows })
    planSteps(stage, side)
    return
  }
  if (says === undefined && !isChecked(stage, condition.formula))
    throw moduleFault(stage, `the branch on \`${condition.formula}\` says nothing`)
  const test = truthOf(stage, condition.formula)
  const yes = guardedBy(stage, test.slot, 1)
  const no = guardedBy(stage, test.slot, 0)
  const sides = [yes, no].flatMap(side => side.guards.slice(guards.length))
  const line: PlannedBranch = { kind: 'branch', test: { ...test, sides }, guards, says: says ?? '', place, ...rows }
  // One that says nothing is judged and not printed.
  if (says === undefined) stage.draft.trail.push(line)
  else addLine(stage, line)
  planSteps(yes, step.yes)
  planSteps(no, step.no)
}

/** Whether a check of the same comparison stands before in these steps: its verdict tells which side follows. */
const isChecked = ({ lines }: Stage, formula: string): boolean =>
  lines.some(line => line.kind === 'check' && line.formula.text === formula)

/** What the author chose, in the words of the input: `how the roof holds the wall: pinned`. */
function chosenWords(
  { module, scope }: Stage,
  condition: Exclude<Condition, { readonly formula: string }>,
  holds: boolean,
): string {
  const name = 'given' in condition ? condition.given : condition.choice
  const says = inputOf(module, name)?.says ?? name
  return `${says}: ${'given' in condition ? (holds ? 'given' : 'not given') : wordIn(scope, name)}`
}

function inputOf({ inputs }: Module, name: string): Input | undefined {
  const fields = Object.values(inputs).flatMap(input => (input.kind === 'list' ? [input.fields[name]] : []))
  return inputs[name] ?? fields.find(field => field !== undefined)
}

/** The same stage, evaluated only where the truth in a slot is `is`. */
export function guardedBy(stage: Stage, truth: number, is: 0 | 1): Stage {
  const guard = newSlot(stage.draft)
  const run = (slots: Float64Array): void => {
    slots[guard] = slots[truth] === is ? 1 : 0
  }
  pushOp(stage.draft, stage, { reads: [truth], writes: [guard], run })
  return { ...stage, guards: [...stage.guards, guard] }
}
