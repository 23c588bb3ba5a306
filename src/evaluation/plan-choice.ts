import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import type { ChoiceInput } from '../modules/module.ts'
import type { Written } from '../notebook/types.ts'
import { lookUp } from './author-formula.ts'
import { isReference } from './definition.ts'
import { breakKey, type Draft, stopKey } from './draft.ts'
import type { Field } from './input-field.ts'
import { readLiteral } from './literal.ts'
import type { Entity, Named, PlannedInput, Word } from './plan-types.ts'
import { shownText } from './shown-text.ts'
import { type Stated, statedIn, wordOf, wordsBeside } from './stated.ts'

type Asked = { readonly input: ChoiceInput; readonly written: Written; readonly taken: boolean }

/**
 * Makes a choice ready: one of its words, an assumption that is one, or a stated number that has the value of one. Breaks its key where it
 * is none of these.
 */
export function planChoice(draft: Draft, asked: Asked, field: Field): PlannedInput | undefined {
  const { input, written, taken } = asked
  const words = Object.keys(input.words)
  const chosen = (text: string, from?: Word | Entity): PlannedInput => ({
    kind: 'word',
    text,
    taken,
    place: written.place,
    ...(from ? { from } : {}),
  })
  if (words.includes(written.text)) return chosen(written.text)
  const named = isReference(written.text) ? lookUp(draft, written.text, field.blockName) : undefined
  if (named && 'rule' in named) {
    stopKey(draft, field.key, named)
    return undefined
  }
  if (named?.kind === 'word' && words.includes(named.text)) return chosen(named.text, named)
  const stated = named?.kind === 'number' ? statedIn(named) : undefined
  const value = stated ? { ...stated, si: draft.start[stated.slot] ?? Number.NaN } : readLiteral(written.text)
  const same = value && wordOf(words, value)
  if (same === undefined) {
    refuse(draft, { written, words, named, value }, field)
    return undefined
  }
  if (stated && !draft.chosen.has(stated)) draft.chosen.set(stated, field.key)
  return chosen(same, named?.kind === 'number' ? named : undefined)
}

interface Refused {
  readonly written: Written
  readonly words: readonly string[]
  readonly named: Named | undefined
  readonly value: Stated | undefined
}

function refuse(draft: Draft, about: Refused, field: Field): void {
  const { written, named } = about
  const { text, place } = written
  const isUnknown = isReference(text) && !named
  const fault: Diagnostic = isUnknown
    ? { rule: 'name-unknown', severity: 'error', place, says: `Nothing here is named \`${text}\`` }
    : { rule: 'choice-unknown', severity: 'error', place, ...noChoice(about, field.name) }
  if (isUnknown) draft.unknown.set(fault, { name: text, block: field.blockName })
  breakKey(draft, field.key, fault)
}

type Said = Pick<Diagnostic, 'says' | 'help'>

function noChoice({ written, words, named, value }: Refused, name: string): Said {
  const number = named?.kind === 'number' ? named : undefined
  const beside = value ? wordsBeside(words, value) : []
  if (beside.length > 0) {
    const is = number && value ? `${shownText(number, value.si)}, which is ` : ''
    const help = `The nearest ${beside.length > 1 ? 'are' : 'is'} ${quoted(beside)}`
    return { says: `\`${written.text}\` is ${is}not a choice for \`${name}\``, help }
  }
  const all = `The choices are ${quoted(words)}`
  const measured = words.some(word => readLiteral(word))
  if (number && !value && measured)
    return { says: `\`${written.text}\` is worked out, and \`${name}\` is chosen before anything is`, help: all }
  const text = named?.kind === 'word' ? named.text : written.text
  const nearest = nearestName(text, words)
  const kind = named && named.kind !== 'word' && !measured ? 'a short text' : 'a choice'
  return { says: `\`${text}\` is not ${kind} for \`${name}\``, help: nearest ? `Did you mean \`${nearest}\`?` : all }
}

const quoted = (words: readonly string[]): string => words.map(word => `\`${word}\``).join(', ')
