import type { Place } from '../diagnostic/diagnostic.ts'
import type { Condition, Input, Module, QuantityInput } from '../modules/module.ts'
import type { Definition } from './definition.ts'
import { type Draft, newSlot, ownFormula, pushOp } from './draft.ts'
import { truth } from './judge-blocks.ts'
import { ownLiteral } from './literal.ts'
import { findIn, judge, type ListRow, newScope, type Scope, type Stage } from './module-scope.ts'
import { planSecond } from './plan-second.ts'
import { gatherRows, planSteps } from './plan-steps.ts'
import type {
  Entity,
  Judged,
  PlannedFormula,
  PlannedGiven,
  PlannedInput,
  PlannedLimit,
  PlannedRange,
} from './plan-types.ts'

/** Plans one calc block whose inputs are all ready: its given values, limits, steps, second method and cautions. */
export function planModule(draft: Draft, definition: Extract<Definition, { kind: 'module' }>): void {
  const { module, block } = definition
  const source = draft.notebook.blocks[block]
  if (source?.kind !== 'calc') return
  const alive = newSlot(draft, 1)
  const stage: Stage = {
    draft,
    module,
    block,
    blockName: source.name.text,
    place: source.place,
    scope: newScope(),
    guards: [alive],
    lines: [],
    second: false,
    all: new Map(),
  }
  const given: PlannedGiven[] = []
  const lines: PlannedFormula[] = []
  const rows = new Map<string, number>()
  for (const [name, input] of Object.entries(module.inputs)) {
    const planned = draft.inputs.get(`${stage.blockName}.${name}`) ?? { kind: 'absent' }
    takeInput(stage, { name, input, planned, given, lines })
    if (planned.kind === 'rows') rows.set(name, planned.rows.length)
  }
  judgeRanges(stage, given, alive)
  const limits = planWithLimits(stage, alive)
  const second = module.second && planSecond(stage, module.second)
  forgetWhereStopped(stage, alive)
  const cautions = module.cautions.map(caution => ({
    caution,
    judged: typeof caution === 'string' ? { known: true } : judge(stage, caution.when),
  }))
  draft.blocks[block] = {
    kind: 'calc',
    index: block,
    module,
    given,
    lines: [...lines, ...stage.lines],
    limits,
    cautions,
    alive,
    words: wordsOf(stage.scope),
    rows,
    names: stage.all,
    ...(second ? { second } : {}),
  }
}

interface Taken {
  readonly name: string
  readonly input: Input
  readonly planned: PlannedInput
  readonly given: PlannedGiven[]
  readonly lines: PlannedFormula[]
}

/** Puts an input's value, word or rows into the block's scope, and its rows into the Given table. */
function takeInput(stage: Stage, taken: Taken): void {
  const { name, input, planned } = taken
  if (planned.kind !== 'rows') {
    takeField(stage, stage.scope, { ...taken, input: input as Exclude<Input, { kind: 'list' }> })
    return
  }
  if (input.kind !== 'list') return
  const rows: ListRow[] = []
  for (const [index, fields] of planned.rows.entries()) {
    const row = { list: name, index, of: planned.rows.length, label: labelOf(fields, input.fields) }
    const scope = newScope(stage.scope, rows.at(-1)?.scope)
    for (const [field, fieldInput] of Object.entries(input.fields)) {
      const made = fields.get(field) ?? { kind: 'absent' }
      takeField({ ...stage, row }, scope, { ...taken, name: field, input: fieldInput, planned: made })
    }
    rows.push({ scope, row })
  }
  stage.scope.lists.set(name, rows)
  gatherRows(stage, name)
}

function labelOf(fields: ReadonlyMap<string, PlannedInput>, inputs: Readonly<Record<string, Input>>): string {
  for (const [name, value] of fields) if (inputs[name]?.kind === 'label' && value.kind === 'word') return value.text
  return ''
}

function takeField(
  stage: Stage,
  scope: Scope,
  taken: Taken & { readonly input: Exclude<Input, { kind: 'list' }> },
): void {
  const { name, input, planned, given, lines } = taken
  const row = stage.row ? { row: stage.row } : {}
  if (planned.kind === 'number') {
    const { entity, line } = planned
    scope.names.set(name, entity)
    scope.given.add(name)
    stage.all.set(entity.name, entity)
    if (line) lines.push(line)
    const { symbol, place } = entity
    given.push({
      name: entity.name,
      symbol,
      says: input.says,
      value: entity,
      taken: planned.taken,
      place,
      ...row,
      ...(line ? { line } : {}),
    })
  } else if (planned.kind === 'word') {
    scope.words.set(name, planned.text)
    scope.given.add(name)
    const { text, from, place } = planned
    given.push({
      name: stage.row ? `${name}_${stage.row.index + 1}` : name,
      symbol: '',
      says: input.says,
      value: text,
      taken: planned.taken,
      place,
      ...row,
      ...(from ? { word: from } : {}),
    })
  }
}

/** Words by outside name: `edges`; a row's as `material_2`. */
function wordsOf(scope: Scope): ReadonlyMap<string, string> {
  const words = new Map(scope.words)
  for (const rows of scope.lists.values()) {
    for (const { scope: own, row } of rows)
      for (const [name, word] of own.words) words.set(`${name}_${row.index + 1}`, word)
  }
  return words
}

/** An input outside what the method allows stops the block before its first step. */
function judgeRanges(stage: Stage, given: readonly PlannedGiven[], alive: number): void {
  for (const { value, row, name } of given) {
    if (typeof value === 'string') continue
    const input = inputOf(
      stage.module,
      row ? { list: row.list, field: name.slice(0, name.lastIndexOf('_')) } : { field: name },
    )
    const ranges = input ? rangesOf(input, { entity: value, block: stage.block, alive }) : []
    stage.draft.ranges.push(...ranges)
    const refusing = ranges.filter(range => range.refuses)
    pushOp(stage.draft, { guards: [], second: false }, slots => {
      const now = slots[value.slot] ?? Number.NaN
      if (!Number.isFinite(now) || refusing.some(range => !range.keeps(now))) slots[alive] = 0
    })
  }
}

function inputOf(module: Module, where: { list?: string; field: string }): QuantityInput | undefined {
  const list = where.list ? module.inputs[where.list] : undefined
  const input = list?.kind === 'list' ? list.fields[where.field] : module.inputs[where.field]
  return input?.kind === 'quantity' ? input : undefined
}

const slack = 1e-9

function rangesOf(input: QuantityInput, about: { entity: Entity; block: number; alive: number }): PlannedRange[] {
  const si = (text: string): number => ownLiteral(text).si
  const room = (bound: number): number => slack * Math.abs(bound)
  const make = (says: string, refuses: boolean, keeps: (value: number) => boolean): PlannedRange => ({
    ...about,
    says,
    refuses,
    keeps,
  })
  const ranges: PlannedRange[] = []
  const { above, below, least, most, usual } = input
  if (above !== undefined)
    ranges.push(make(`greater than ${above}`, true, value => value > si(above) + room(si(above))))
  if (below !== undefined) ranges.push(make(`less than ${below}`, true, value => value < si(below) - room(si(below))))
  if (least !== undefined) ranges.push(make(`at least ${least}`, true, value => value >= si(least) - room(si(least))))
  if (most !== undefined) ranges.push(make(`at most ${most}`, true, value => value <= si(most) + room(si(most))))
  if (usual) {
    const [from, to] = usual
    const inside = (value: number) => value >= si(from) - room(si(from)) && value <= si(to) + room(si(to))
    ranges.push(make(`usually ${from} to ${to}`, false, inside))
  }
  return ranges
}

/** Plans the steps, and each limit as soon as every name it needs is known. A refusal stops what follows. */
function planWithLimits(stage: Stage, alive: number): PlannedLimit[] {
  const waiting = new Set(stage.module.limits)
  const planned: PlannedLimit[] = []
  const planReady = (): void => {
    for (const limit of waiting) {
      const names = 'formula' in limit.holds ? ownFormula(stage.draft, limit.holds.formula).names : []
      if (names.some(name => findIn(stage.scope, name) === undefined)) continue
      waiting.delete(limit)
      const judged = judgeLimit(stage, limit.holds)
      if (limit.otherwise === 'refuse') {
        pushOp(stage.draft, stage, slots => {
          if (truth(judged, slots) === false) slots[alive] = 0
        })
      }
      planned.push({ limit, judged, place: limitPlace(stage, limit.on) })
    }
  }
  planReady()
  for (const step of stage.module.steps) {
    planSteps(stage, [step])
    planReady()
  }
  return planned
}

/** A limit's condition. One that comes to nothing although every number in it is known, as `1 / 0 < 2` does, is not kept. */
function judgeLimit(stage: Stage, holds: Condition): Judged {
  const judged = judge(stage, holds)
  if ('known' in judged) return judged
  const { slot, operands } = judged
  pushOp(stage.draft, stage, slots => {
    const known = operands.every(operand => Number.isFinite(slots[operand.slot]))
    if (known && Number.isNaN(slots[slot])) slots[slot] = 0
  })
  return judged
}

/** A block that is refused gives nothing: what its steps had come to before the refusal is taken back. */
function forgetWhereStopped(stage: Stage, alive: number): void {
  const steps = [...stage.all.values()].filter(({ origin }) => origin === 'step')
  pushOp(stage.draft, { guards: [], second: false }, slots => {
    if (slots[alive] !== 1) for (const { slot } of steps) slots[slot] = Number.NaN
  })
}

function limitPlace(stage: Stage, on: string | undefined): Place {
  const block = stage.draft.notebook.blocks[stage.block]
  const keyed = block?.kind === 'calc' && on ? block.inputs.find(input => input.key.text === on) : undefined
  if (!keyed) return stage.place
  return keyed.value.kind === 'scalar' ? keyed.value.written.place : keyed.key.place
}
