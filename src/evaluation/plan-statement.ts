import { kindWords } from '../formula/kind-words.ts'
import type { Statement } from '../notebook/types.ts'
import { sameAs, soundFormula } from './author-formula.ts'
import type { Definition } from './definition.ts'
import { breakKey, type Draft, newSlot } from './draft.ts'
import { pushTruth, pushValue } from './draft-ops.ts'
import { type Literal, readLiteral } from './literal.ts'
import { meantToDefine } from './meant-to-define.ts'
import { sidesOf } from './plan-check.ts'
import type { Entity, PlannedLine, Points } from './plan-types.ts'
import { resultUnit } from './result-unit.ts'

type StatementDefinition = Extract<Definition, { kind: 'statement' }>

/** Plans one line of a work block: a step, a check, or a table of points. */
export function planStatement(draft: Draft, definition: StatementDefinition): void {
  const { statement } = definition
  if (statement.kind === 'table') planTable(draft, definition, statement)
  else if (statement.kind === 'step') planStep(draft, definition, statement)
  else planOwnCheck(draft, definition, statement)
}

function addLine(draft: Draft, definition: StatementDefinition, line: PlannedLine): void {
  draft.trail.push(line)
  const lines = draft.statements.get(definition.block) ?? []
  lines.push({ index: definition.index, line })
  draft.statements.set(definition.block, lines)
}

/** The block of each working, its lines in the author's order, whatever order they were planned in. */
export function gatherStatements(draft: Draft): void {
  for (const [index, statements] of draft.statements) {
    const lines = statements.sort((a, b) => a.index - b.index).map(({ line }) => line)
    draft.blocks[index] = { kind: 'work', index, lines }
  }
}

const blockNameOf = (draft: Draft, definition: StatementDefinition): string =>
  draft.notebook.blocks[definition.block]?.name.text ?? ''

function planStep(
  draft: Draft,
  definition: StatementDefinition,
  statement: Extract<Statement, { kind: 'step' }>,
): void {
  const { key, block, reading, place } = definition
  const sound = reading && soundFormula(draft, reading, { key, block: blockNameOf(draft, definition) })
  if (!sound) return
  if (sound.result.kind !== 'value') {
    const says = `\`${statement.name.text}\` must be a number; this is ${kindWords(sound.result, draft.system)}`
    breakKey(draft, key, { rule: 'value-kind', severity: 'error', place: statement.formula.place, says })
    return
  }
  const { formula, operands, compiled } = sound
  const { dimension } = sound.result
  const same = sameAs(sound)
  const name = statement.name.text
  const remark = statement.remark?.text ?? ''
  const gives: Entity = {
    kind: 'number',
    key,
    name,
    block,
    origin: 'step',
    slot: newSlot(draft),
    dimension,
    point: sound.result.point === true,
    unit: resultUnit(draft, { dimension, point: sound.result.point, to: formula.to ?? same?.unit }),
    symbol: name,
    says: remark,
    place,
    ...(same ? { same } : {}),
  }
  pushValue(draft, { guards: [], second: false }, { slot: gives.slot, formula, operands, compiled })
  draft.names.set(key, gives)
  addLine(draft, definition, { kind: 'formula', gives, formula, operands, compiled, guards: [], says: remark, place })
}

function planOwnCheck(
  draft: Draft,
  definition: StatementDefinition,
  statement: Extract<Statement, { kind: 'check' }>,
): void {
  const { key, reading, place, index } = definition
  const meant = reading?.read.ok ? meantToDefine(reading.read.formula) : undefined
  const sound = reading && soundFormula(draft, reading, { key, block: blockNameOf(draft, definition), meant })
  if (!sound) return
  if (sound.result.kind !== 'truth') {
    breakKey(draft, key, {
      rule: 'statement-unread',
      severity: 'error',
      place: statement.formula.place,
      says: `This line is neither a step nor a check: it is ${kindWords(sound.result, draft.system)} without a name`,
      help: 'Write `name = …` to keep the value, or a comparison to check it',
    })
    return
  }
  const { formula, operands, compiled } = sound
  const slot = newSlot(draft)
  pushTruth(draft, { guards: [], second: false }, { slot, formula, operands, compiled })
  const sides = sidesOf(draft, formula.tree, { operands, find: name => operands.get(name) })
  const says = statement.remark?.text ?? formula.text
  addLine(draft, definition, {
    kind: 'check',
    name: `check_${index + 1}`,
    formula,
    operands,
    compiled,
    slot,
    guards: [],
    says,
    place,
    ...(sides ? { sides } : {}),
  })
}

function planTable(
  draft: Draft,
  definition: StatementDefinition,
  statement: Extract<Statement, { kind: 'table' }>,
): void {
  const { key, block, place } = definition
  const points = statement.points.map(([x, y]) => ({ at: x.place, x: readLiteral(x.text), y: readLiteral(y.text) }))
  const [first] = points
  const bad = points.find(({ x, y }) => !isAlike(x, first?.x) || !isAlike(y, first?.y))
  const xs = points.map(({ x }) => x?.si ?? Number.NaN)
  const falling = points.findIndex((_, index) => index > 0 && !((xs[index] ?? 0) > (xs[index - 1] ?? 0)))
  if (bad || points.length < 2 || falling > 0) {
    const says = bad
      ? 'A point of a table is two quantities, of the same dimensions in every point'
      : 'A table has two or more points, the first quantity rising'
    breakKey(draft, key, {
      rule: 'value-kind',
      severity: 'error',
      place: (bad ?? points[falling] ?? { at: place }).at,
      says,
    })
    return
  }
  if (!first?.x || !first.y) return
  const kinds = {
    from: first.x.dimension,
    to: first.y.dimension,
    ...(first.x.point ? { fromPoint: true } : {}),
    ...(first.y.point ? { toPoint: true } : {}),
  }
  const y = points.map(point => point.y?.si ?? Number.NaN)
  const typed = points.flatMap(point => (point.x && point.y ? { x: point.x, y: point.y } : []))
  const remark = statement.remark?.text ?? ''
  const named: Points = { kind: 'points', key, name: statement.name.text, block, kinds, x: xs, y, typed, remark, place }
  draft.names.set(key, named)
  draft.blocks[block] ??= { kind: 'work', index: block, lines: [] }
}

const isAlike = (a: Literal | undefined, b: Literal | undefined): boolean =>
  a !== undefined && a.dimension === b?.dimension && a.point === b.point
