import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import type { ChoiceInput } from '../modules/module.ts'
import type { Written } from '../notebook/types.ts'
import { lookUp } from './author-formula.ts'
import { isReference } from './definition.ts'
import { breakKey, type Draft, stopKey } from './draft.ts'
import type { Field } from './input-field.ts'
import type { Named, PlannedInput } from './plan-types.ts'

/** Makes a choice ready: one of its words, or an assumption that is one. Breaks its key where it is neither. */
export function planChoice(
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
