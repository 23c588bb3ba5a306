import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { kindWords, valueWords } from '../formula/kind-words.ts'
import type { Input, QuantityInput } from '../modules/module.ts'
import type { Written } from '../notebook/types.ts'
import type { Dimension } from '../quantity/types.ts'
import { unitOf } from '../quantity/unit.ts'
import { type Sound, soundFormula } from './author-formula.ts'
import type { Definition, FieldValue } from './definition.ts'
import { breakKey, type Draft } from './draft.ts'
import { pushValue } from './draft-ops.ts'
import { inputEntity } from './input-entity.ts'
import type { Field } from './input-field.ts'
import { ownDimension } from './own-text.ts'
import { planChoice } from './plan-choice.ts'
import type { Entity, PlannedFormula, PlannedInput, Row } from './plan-types.ts'

type InputDefinition = Extract<Definition, { kind: 'input' }>

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
    return { row, fields: planned }
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
  const entity = inputEntity(draft, { input, sound, dimension, place: value.reading.written.place }, field)
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
