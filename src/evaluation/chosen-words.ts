import type { Input } from '../modules/module.ts'
import { type Definition, type FieldValue, isReference } from './definition.ts'

/**
 * Assumptions that a choice of a module refers to and that are, to the character, one of its words. They are short texts and no numbers, even
 * where they read as a quantity: the bar size `12 mm` chooses a bar, and cannot be moved a little.
 */
export function chosenWords(definitions: readonly Definition[]): ReadonlySet<string> {
  const texts = new Map(
    definitions.flatMap(each => (each.kind === 'assumption' ? [[each.key, each.assumption.value.text] as const] : [])),
  )
  const isChosen = (input: Input | undefined, value: FieldValue): value is Extract<FieldValue, { kind: 'words' }> => {
    if (input?.kind !== 'choice' || value.kind !== 'words' || !isReference(value.written.text)) return false
    return Object.hasOwn(input.words, texts.get(value.written.text) ?? '')
  }
  const chosen = definitions.flatMap(each => {
    if (each.kind !== 'input') return []
    const { input, value } = each
    if (value.kind !== 'rows') return isChosen(input, value) ? [value.written.text] : []
    const fields = input.kind === 'list' ? input.fields : {}
    return value.rows.flatMap(row =>
      [...row].flatMap(([name, own]) => (isChosen(fields[name], own) ? [own.written.text] : [])),
    )
  })
  return new Set(chosen)
}
