import type { Diagnostic, Place } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { kindWords, valueWords } from '../formula/kind-words.ts'
import type { ChoiceInput, Input, QuantityInput } from '../modules/module.ts'
import type { Written } from '../notebook/types.ts'
import type { Dimension, Unit } from '../quantity/types.ts'
import { unitOf } from '../quantity/unit.ts'
import { lookUp, type Sound, sameAs, soundFormula } from './author-formula.ts'
import { type Definition, type FieldValue, isReference } from './definition.ts'
import { breakKey, type Draft, newSlot, stopKey } from './draft.ts'
import { pushValue } from './draft-ops.ts'
import { type Literal, literalOf } from './literal.ts'
import { ownDimension } from './own-text.ts'
import type { Entity, Named, PlannedFormula, PlannedInput, Row } from './plan-types.ts'
import { resultUnit } from './result-unit.ts'

type InputDefinition = Extract<Definition, { kind: 'input' }>

interface Field {
  readonly key: string
  readonly name: string
  readonly block: number
  readonly blockName: string
  readonly place: Place
  readonly row?: Row
}

/** Makes one input of a calc block ready: its number's slot, its word, or its rows. */
export function planInput(draft: Draft, definition: InputDefinition): void {
  const { key, name, block, input, value, place } = definition
  const blockName = draft.notebook.blocks[block]?.name.text ?? ''
  const planned =
    value.kind === 'rows'
      ? planRows(draft, definition, blockName)
      : planField(draft, { input, value }, { key, name, block, blockName, place })
  if (planned) draft.inputs.set(key, planned)
}

function planRows(draft: Draft, definition: InputDefinition, blockName: string): PlannedInput | undefined {
  const { key, name, block, input, value, place } = definition
  if (value.kind !== 'rows' || input.kind !== 'list') return undefined
  const rows = value.rows.map((fields, index) => {
    const row: Row = { list: name, index, of: value.rows.length, label: labelOf(fields, input.fields) }
    const planned = new Map<string, PlannedInput>()
    for (const [field, fieldInput] of Object.entries(input.fields)) {
      const about = { key: `${blockName}.${field}_${index + 1}`, name: field, block, blockName, place, row }
      const made = planField(draft, { input: fieldInput, value: fields.get(field) ?? { kind: 'absent' } }, about)
      if (made) planned.set(field, made)
      else breakList(draft, key, about.key)
    }
    return planned
  })
  return draft.broken.has(key) ? undefined : { kind: 'rows', rows, place }
}

/** A list stands or falls with every value in its rows. */
function breakList(draft: Draft, list: string, row: string): void {
  const cause = draft.broken.get(row)
  if (!cause) throw new Error(`\`${row}\` was not planned, and nothing says why`)
  if (!draft.broken.has(list)) draft.broken.set(list, cause)
}

function labelOf(fields: ReadonlyMap<string, FieldValue>, inputs: Readonly<Record<string, Input>>): string {
  for (const [name, value] of fields)
    if (inputs[name]?.kind === 'label' && value.kind === 'words') return value.written.text
  return ''
}

type Asked = { readonly input: Input; readonly value: FieldValue }

function planField(draft: Draft, asked: Asked, field: Field): PlannedInput | undefined {
  const { input, value } = asked
  if (value.kind === 'absent') return { kind: 'absent' }
  if (input.kind === 'label' && value.kind === 'words') {
    return { kind: 'word', text: value.written.text, taken: value.taken, place: value.written.place }
  }
  if (input.kind === 'choice' && value.kind === 'words')
    return planChoice(draft, { input, written: value.written, taken: value.taken }, field)
  if (input.kind === 'quantity' && value.kind === 'formula') return planQuantity(draft, { input, value }, field)
  throw new Error(`input \`${field.key}\`: a ${input.kind} was read as ${value.kind}`)
}

function planChoice(
  draft: Draft,
  asked: { input: ChoiceInput; written: Written; taken: boolean },
  field: Field,
): PlannedInput | undefined {
  const { input, written, taken } = asked
  const words = Object.keys(input.words)
  if (words.includes(written.text)) return { kind: 'word', text: written.text, taken, place: written.place }
  const refers = isReference(written.text)
  const named = refers ? lookUp(draft, written.text, field.blockName) : undefined
  if (named && 'rule' in named) {
    stopKey(draft, field.key, named)
    return undefined
  }
  if (named?.kind === 'word' && words.includes(named.text)) {
    return { kind: 'word', text: named.text, from: named, taken, place: written.place }
  }
  const fault = refers && !named ? unknownWord(written) : unknownChoice(field, { named, written, words })
  if (refers && !named) draft.unknown.set(fault, { name: written.text, block: field.blockName })
  breakKey(draft, field.key, fault)
  return undefined
}

const unknownWord = ({ text, place }: Written): Diagnostic => ({
  rule: 'name-unknown',
  severity: 'error',
  place,
  says: `Nothing here is named \`${text}\``,
})

function unknownChoice(
  field: Field,
  about: { named: Named | undefined; written: Written; words: readonly string[] },
): Diagnostic {
  const { named, written, words } = about
  const text = named?.kind === 'word' ? named.text : written.text
  const nearest = nearestName(text, words)
  const says = named && named.kind !== 'word' ? `\`${text}\` is not a short text` : `\`${text}\` is not a choice`
  return {
    rule: 'choice-unknown',
    severity: 'error',
    place: written.place,
    says: `${says} for \`${field.name}\``,
    help: nearest ? `Did you mean \`${nearest}\`?` : `The choices are ${words.map(word => `\`${word}\``).join(', ')}`,
  }
}

type Value = Extract<FieldValue, { kind: 'formula' }>

function planQuantity(
  draft: Draft,
  asked: { input: QuantityInput; value: Value },
  field: Field,
): PlannedInput | undefined {
  const { input, value } = asked
  const sound = soundFormula(draft, value.reading, { key: field.key, block: field.blockName })
  if (!sound) return undefined
  const dimension = ownDimension(input.dimension)
  const { result } = sound
  if (result.kind !== 'value' || result.dimension !== dimension || (result.point ?? false) !== onScale(input)) {
    breakKey(
      draft,
      field.key,
      wrongDimension(draft, input, { written: value.reading.written, dimension, got: result, name: field.name }),
    )
    return undefined
  }
  const entity = entityOf(draft, { input, sound, dimension, place: value.reading.written.place }, field)
  draft.names.set(field.key, entity)
  const line = lineOf(draft, { sound, entity, says: input.says }, field)
  return { kind: 'number', entity, taken: value.taken, ...(line ? { line } : {}) }
}

/** Whether an input is a temperature on a scale: its module shows it in degC. */
const onScale = (input: QuantityInput): boolean =>
  input.unit !== undefined && unitOf(input.unit.SI).offset !== undefined

function wrongDimension(
  { system }: Draft,
  input: QuantityInput,
  about: { written: Written; dimension: Dimension; got: Sound['result']; name: string },
): Diagnostic {
  const expected = valueWords({ dimension: about.dimension, point: onScale(input) }, system)
  const got = kindWords(about.got, system)
  return {
    rule: 'dimension-mismatch',
    severity: 'error',
    place: about.written.place,
    says: `Expected ${expected} for \`${about.name}\`, got ${got}`,
    help: `\`${about.name}\` is the ${input.says}${input.unit ? `, for example in ${input.unit[system]}` : ''}`,
  }
}

type Made = {
  readonly input: QuantityInput
  readonly sound: Sound
  readonly dimension: Dimension
  readonly place: Place
}

function entityOf(draft: Draft, made: Made, field: Field): Entity {
  const { input, sound, dimension, place } = made
  const literal = literalOf(sound.formula.tree)
  const same = sameAs(sound)
  const point = sound.result.kind === 'value' && sound.result.point === true
  return {
    kind: 'number',
    key: field.key,
    name: field.row ? `${field.name}_${field.row.index + 1}` : field.name,
    block: field.block,
    origin: 'input',
    slot: newSlot(draft, literal?.si),
    dimension,
    point,
    unit: inputUnit(draft, { input, literal, same, sound }),
    symbol: symbolOf(input.symbol ?? field.name, field.row),
    says: input.says,
    place,
    ...(field.row ? { row: field.row } : {}),
    ...(literal ? { typed: { digits: literal.digits, unit: literal.unit } } : {}),
    ...(same ? { same } : {}),
  }
}

/** A row's symbol has the row's number as a further index. */
export const symbolOf = (symbol: string, row: Row | undefined): string => (row ? `${symbol}_${row.index + 1}` : symbol)

function inputUnit(
  draft: Draft,
  made: { input: QuantityInput; literal: Literal | undefined; same: Entity | undefined; sound: Sound },
): Unit {
  const { input, literal, same, sound } = made
  if (input.unit) return unitOf(input.unit[draft.system])
  if (sound.formula.to) return sound.formula.to
  return literal?.unit ?? same?.unit ?? resultUnit(draft, { dimension: ownDimension(input.dimension) })
}

/** A formula is worked out on a line of its own; a literal or a bare name is not. */
function lineOf(
  draft: Draft,
  made: { sound: Sound; entity: Entity; says: string },
  field: Field,
): PlannedFormula | undefined {
  const { sound, entity, says } = made
  if (entity.typed) return undefined
  const { formula, operands, compiled } = sound
  pushValue(draft, { guards: [], second: false }, { slot: entity.slot, formula, operands, compiled })
  if (entity.same) return undefined
  const row = field.row ? { row: field.row } : {}
  const { place } = entity
  const line: PlannedFormula = {
    kind: 'formula',
    gives: entity,
    formula,
    operands,
    compiled,
    guards: [],
    says,
    place,
    ...row,
  }
  draft.trail.push(line)
  return line
}
