import type { CalcBlock } from '../notebook/types.ts'
import type { FieldChange } from './change-types.ts'
import { type Edit, inBlock, restOf, usesOf } from './edit.ts'
import { entryText, entryTexts } from './meaning.ts'

/** A block that is worked by another module: one change, whatever its inputs are. */
export function moduleEdit(old: CalcBlock, now: CalcBlock, key: string): Edit {
  const block = old.name.text
  const names = new Set([...now.inputs, ...old.inputs].map(each => each.key.text))
  const fields = [...names].flatMap((field): FieldChange[] => {
    const [a, b] = [old, now]
      .map(of => of.inputs.find(({ key: name }) => name.text === field))
      .map(each => (each ? entryText(each.value) : ''))
    return a === undefined || b === undefined || a === b ? [] : [{ field, old: a, now: b }]
  })
  return {
    change: {
      what: 'module',
      action: 'changed',
      key,
      old: old.module.text,
      now: now.module.text,
      fields,
      bears: true,
      line: now.module.place.line,
    },
    put: inBlock(block, () => now),
    brings: [block],
    uses: usesOf(
      [...old.inputs, ...now.inputs].flatMap(({ value }) => entryTexts(value)),
      block,
    ),
    enters: [block, restOf(block)],
  }
}
