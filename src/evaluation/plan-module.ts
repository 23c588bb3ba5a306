import type { Input } from '../modules/module.ts'
import type { Definition } from './definition.ts'
import { type Draft, newSlot } from './draft.ts'
import { isTrue, judge, type Stage } from './module-scope.ts'
import { forgetWhereStopped, planWithLimits } from './plan-limits.ts'
import { planRanges } from './plan-ranges.ts'
import { gatherRows } from './plan-rows.ts'
import { planSecond } from './plan-second.ts'
import type { PlannedFormula, PlannedGiven, PlannedInput } from './plan-types.ts'
import { type ListRow, newScope, type Scope } from './scope.ts'

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
  for (const [name, input] of Object.entries(module.inputs)) {
    const planned = draft.inputs.get(`${stage.blockName}.${name}`) ?? { kind: 'absent' }
    takeInput(stage, { name, input, planned, given, lines })
  }
  planRanges(stage, given, alive)
  const limits = planWithLimits(stage, { steps: module.steps, limits: module.limits, alive })
  const second = module.second && planSecond(stage, module.second)
  forgetWhereStopped(stage, { alive, gives: [...stage.all.values()].filter(({ origin }) => origin === 'step') })
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
    rows: new Map([...stage.scope.lists].map(([name, { length }]) => [name, length])),
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
  for (const { row, fields } of planned.rows) {
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
    const idle =
      input.kind === 'quantity' && input.when !== undefined && !isTrue(judge({ ...stage, scope }, input.when))
    if (idle && planned.taken) return
    given.push({
      name: entity.name,
      symbol,
      says: idle ? `${input.says}: no part in this calculation` : input.says,
      value: entity,
      taken: planned.taken,
      ...(planned.taken && input.kind === 'quantity' && input.source ? { source: input.source } : {}),
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
