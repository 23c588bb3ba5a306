import type { CarriedStep, FormulaStep, TakeStep } from '../modules/module.ts'
import { pushValue } from './draft-ops.ts'
import { addLine, declare, lineBase, moduleFault, type Stage, soundStep } from './module-scope.ts'
import type { Entity } from './plan-types.ts'
import { findIn, newScope } from './scope.ts'

/** Plans one line of working: proved, given its slot, worked out when its numbers are known. */
export function planFormula(stage: Stage, step: Omit<FormulaStep, 'kind'>): void {
  const sound = soundStep(stage, step.formula)
  if (sound.result.kind !== 'value') throw moduleFault(stage, `\`${step.name}\` is not a number`)
  const { formula, operands, compiled } = sound
  const { dimension, point } = sound.result
  const gives = declare(stage, { ...step, dimension, point, to: formula.to })
  pushValue(stage.draft, stage, { slot: gives.slot, formula, operands, compiled })
  addLine(stage, { kind: 'formula', ...lineBase(stage, step), gives, formula, operands, compiled })
}

/** Plans a value handed from row to row: the first row's own formula, then the value of the row before. */
export function planCarried(stage: Stage, step: CarriedStep): void {
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

/** Plans a value of the first or last row. */
export function planTake(stage: Stage, step: TakeStep): void {
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
  addLine(stage, { kind: 'formula', ...lineBase(stage, { says: step.says }), gives, formula, operands, compiled })
}
