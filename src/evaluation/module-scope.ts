import type { Place } from '../diagnostic/diagnostic.ts'
import type { Condition, Module, Step, UnitChoice } from '../modules/module.ts'
import type { Citation } from '../modules/sources.ts'
import type { Dimension, Unit } from '../quantity/types.ts'
import { type Draft, newSlot } from './draft.ts'
import { pushTruth } from './draft-ops.ts'
import { compileIn, entitiesOf, type Find, operandsOf, proveIn } from './operands.ts'
import { ownFormula } from './own-text.ts'
import type { Entity, Judged, Operands, PlannedLine, Row } from './plan-types.ts'
import { resultUnit } from './result-unit.ts'
import { rowSymbol } from './row-symbol.ts'
import { findIn, isGiven, type Scope, wordIn } from './scope.ts'

/** Where steps are being planned: which block, scope, guards and row. */
export interface Stage {
  readonly draft: Draft
  readonly module: Module
  readonly block: number
  readonly blockName: string
  readonly place: Place
  readonly scope: Scope
  readonly guards: readonly number[]
  readonly lines: PlannedLine[]
  readonly second: boolean
  /** Every entity of the block by its outside name, for sketches and the author's references. */
  readonly all: Map<string, Entity>
  readonly row?: Row
  /** In a row: the step that is being planned. */
  readonly step?: Step
}

/** What names stand for where a stage stands. */
export const findFor =
  (stage: Stage): Find =>
  name =>
    findIn(stage.scope, name)

/** The key by which an input is known outside its block: `roof.edges`; in a row `stack.material_2`. */
export function inputKey({ scope, blockName, row }: Stage, name: string): string {
  const own = row && (scope.words.has(name) || scope.names.has(name))
  return own ? `${blockName}.${name}_${row.index + 1}` : `${blockName}.${name}`
}

/** Our own bug in a module, with where it stands. */
export const moduleFault = (stage: Stage, says: string): Error => new Error(`module ${stage.module.id}: ${says}`)

/** A formula of the module, proved in this scope. Throws where it does not hold together: our own bug. */
export function soundStep(stage: Stage, text: string) {
  const formula = ownFormula(stage.draft, text)
  const find = findFor(stage)
  const proof = proveIn(stage.draft, formula, find)
  if (!proof.ok) throw moduleFault(stage, `\`${text}\`: ${proof.faults.map(fault => fault.says).join('; ')}`)
  const operands: Operands = operandsOf(formula, find)
  return { formula, operands, compiled: compileIn(formula, find), result: proof.result }
}

export interface Declared {
  readonly name: string
  readonly dimension: Dimension
  readonly point?: boolean | undefined
  readonly says: string
  readonly symbol?: string | undefined
  readonly unit?: UnitChoice | undefined
  readonly fixedUnit?: Unit | undefined
  readonly to?: Unit | undefined
  readonly same?: Entity | undefined
}

/** The entity of a step: a new one, or the one that the other side of a branch has already declared. */
export function declare(stage: Stage, about: Declared): Entity {
  const known = stage.scope.names.get(about.name)
  if (known) {
    if (!('kind' in known) || known.dimension !== about.dimension || known.point !== (about.point ?? false))
      throw moduleFault(stage, `\`${about.name}\` has two meanings`)
    return known
  }
  const { draft, row } = stage
  const name = row ? `${about.name}_${row.index + 1}` : about.name
  const { dimension, point = false } = about
  const unit = about.fixedUnit ?? resultUnit(draft, { dimension, point, choice: about.unit, to: about.to })
  if (unit.dimension !== dimension || (unit.offset !== undefined && !point))
    throw moduleFault(stage, `\`${about.name}\` cannot be shown in \`${unit.text}\``)
  const entity: Entity = {
    kind: 'number',
    key: `${stage.blockName}.${name}`,
    name,
    block: stage.block,
    origin: 'step',
    slot: newSlot(draft),
    dimension,
    point,
    unit,
    symbol: rowSymbol(about.symbol ?? about.name, row),
    says: about.says,
    place: stage.place,
    ...(row ? { row } : {}),
    ...(about.same ? { same: about.same } : {}),
  }
  stage.scope.names.set(about.name, entity)
  if (stage.all.has(name)) throw moduleFault(stage, `\`${name}\` is given twice`)
  stage.all.set(name, entity)
  draft.names.set(entity.key, entity)
  return entity
}

/** What every line has from the stage that it is planned in. */
export const lineBase = (
  { guards, place, row }: Stage,
  { says, source }: { readonly says: string; readonly source?: Citation | undefined },
) => ({ guards, says, place, ...(source ? { source } : {}), ...(row ? { row } : {}) })

/** Adds a line to the block's working. */
export function addLine({ lines, draft, row, step }: Stage, line: PlannedLine): void {
  const own: PlannedLine = row && step ? { ...line, ofStep: step } : line
  lines.push(own)
  draft.trail.push(own)
}

/** Whether a condition holds: known from words at once, or a slot of truth that an op fills. */
export function judge(stage: Stage, condition: Condition): Judged {
  if ('given' in condition) return { known: isGiven(stage.scope, condition.given) }
  if ('choice' in condition) {
    const word = wordIn(stage.scope, condition.choice)
    if (word === undefined) throw moduleFault(stage, `no choice is called \`${condition.choice}\``)
    return { known: condition.is.includes(word) }
  }
  const { slot, operands } = truthOf(stage, condition.formula)
  return { slot, operands: entitiesOf(operands) }
}

/** A condition on words that holds. */
export const isTrue = (judged: Judged): boolean => 'known' in judged && judged.known

/** A comparison of the module with the slot that holds its truth: 1, 0, or NaN where an operand has no value. */
export function truthOf(stage: Stage, text: string) {
  const sound = soundStep(stage, text)
  if (sound.result.kind !== 'truth') throw moduleFault(stage, `\`${text}\` is not a comparison`)
  const slot = newSlot(stage.draft)
  pushTruth(stage.draft, stage, { slot, ...sound })
  return { ...sound, slot }
}
