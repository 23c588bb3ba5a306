import type { CaseInput, Input, ListInput, Module, QuantityInput } from '../../src/modules/module.ts'
import { dimensionByName } from '../../src/quantity/dimension-names.ts'
import { displayPoint, displayUnit } from '../../src/quantity/display-unit.ts'
import { unitOf } from '../../src/quantity/unit.ts'

type Inputs = Record<string, CaseInput>
type Row = Record<string, string>

/** Some quantity of the input's dimension; whether it lies in the range is all the same where only dimensions are proved. */
function some(input: QuantityInput): string {
  const { usual, least, most, unit } = input
  const bound = input.default ?? usual?.[0] ?? least ?? most
  if (bound !== undefined) return bound
  if (unit && unitOf(unit.SI).offset !== undefined) return `10 ${displayPoint('SI').text}`
  const dimension = dimensionByName(input.dimension)
  if (!dimension) throw new Error(`no dimension is called ${input.dimension}`)
  return `1 ${displayUnit(dimension, 'SI').text}`.trim()
}

type Field = Exclude<Input, ListInput>

const isOptional = (input: Field): boolean => input.kind !== 'choice' && input.optional === true

function textOf(input: Field, word: number): string {
  if (input.kind === 'label') return 'some label'
  if (input.kind === 'quantity') return some(input)
  const words = Object.keys(input.words)
  return words[word % words.length] ?? ''
}

/** Rows of a list: every word of its choices in turn, the optional fields given in all rows, in none, or in every other one. */
function rowsOf(list: ListInput, about: { word: number; optional: 'all' | 'none' | 'some'; count?: number }): Row[] {
  const { count = Math.max(list.least, Math.min(list.most, 2)) } = about
  return Array.from({ length: count }, (_, index) => {
    const given = about.optional === 'all' || (about.optional === 'some' && index % 2 === 1)
    const fields = Object.entries(list.fields).filter(([, field]) => !isOptional(field) || given)
    return Object.fromEntries(fields.map(([name, field]) => [name, textOf(field, about.word + index)]))
  })
}

/** Whether a branch, limit, caution or method asks for the choice; one that only picks a row of a table steers nothing. */
const steers = ({ steps, limits, cautions, second }: Module, choice: string): boolean =>
  JSON.stringify([steps, limits, cautions, second]).includes(`"choice":${JSON.stringify(choice)}`)

/**
 * Inputs of a module in every combination of the choices that steer it and of its optional inputs given or left out; the words of
 * other choices and of choices in rows, and optional fields in all, some or no rows, run along. Refuses (throws) a module with more combinations than `most`.
 */
export function inputSets(module: Module, most = 2000): readonly Inputs[] {
  let sets: Inputs[] = [{}]
  const widen = (name: string, values: readonly (CaseInput | undefined)[]): void => {
    sets = sets.flatMap(set => values.map(value => (value === undefined ? set : { ...set, [name]: value })))
    if (sets.length > most) throw new Error(`${module.id} has more than ${most} combinations of choices`)
  }
  for (const [name, input] of Object.entries(module.inputs)) {
    if (input.kind === 'choice') widen(name, steers(module, name) ? Object.keys(input.words) : [textOf(input, 0)])
    else if (input.kind === 'list') continue
    else if (isOptional(input)) widen(name, [textOf(input, 0), undefined])
    else widen(name, [textOf(input, 0)])
  }
  const lists = Object.entries(module.inputs).flatMap(([name, input]) =>
    input.kind === 'list' ? [[name, input] as const] : [],
  )
  const along = Object.entries(module.inputs).flatMap(([name, input]) =>
    input.kind === 'choice' && !steers(module, name) ? [[name, input] as const] : [],
  )
  const choices = [...lists.flatMap(([, { fields }]) => Object.values(fields)), ...along.map(([, input]) => input)]
  const words = Math.max(1, ...choices.map(field => (field.kind === 'choice' ? Object.keys(field.words).length : 1)))
  const times = lists.length === 0 ? 1 : 3
  return Array.from({ length: Math.max(sets.length, words) * times }, (_, index) => {
    const turn = Math.floor(index / times)
    const about = { word: turn, optional: (['all', 'none', 'some'] as const)[index % 3] ?? 'all' }
    const rows = Object.fromEntries(lists.map(([name, list]) => [name, rowsOf(list, about)]))
    const taken = Object.fromEntries(along.map(([name, input]) => [name, textOf(input, turn)]))
    return withoutIdle(module, { ...sets[turn % sets.length], ...taken, ...rows })
  })
}

/** Inputs that must be given with some words of a choice only are left out with the others. */
function withoutIdle(module: Module, set: Inputs): Inputs {
  const idle = (name: string): boolean => {
    const input = module.inputs[name]
    if (input?.kind !== 'quantity' || !input.when || input.optional || input.default !== undefined) return false
    return !input.when.is.includes(String(set[input.when.choice]))
  }
  return Object.fromEntries(Object.entries(set).filter(([name]) => !idle(name)))
}

/** Inputs of a module with its longest lists. */
export function longestInputs(module: Module): Inputs {
  const [first = {}] = inputSets(module)
  const lists = Object.entries(module.inputs).flatMap(([name, input]) =>
    input.kind === 'list' ? [[name, rowsOf(input, { word: 0, optional: 'all', count: input.most })] as const] : [],
  )
  return { ...first, ...Object.fromEntries(lists) }
}
