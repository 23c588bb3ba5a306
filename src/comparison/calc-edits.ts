import type { CalcBlock, Keyed } from '../notebook/types.ts'
import { type Differences, type Edit, reordered } from './edit.ts'
import { type Compared, inputEdit } from './input-edit.ts'
import { entryMeaning, entryText } from './meaning.ts'
import { moduleEdit } from './module-edit.ts'
import { noRenames } from './renames.ts'
import { rowwise, wholeRowEdits } from './row-edits.ts'

type Shown = (key: string) => string

/** What differs between two calc blocks of one name: input by input, row by row, or as one change where the module is another. */
export function calcEdits(old: CalcBlock, now: CalcBlock, shown: Shown): Differences {
  const block = old.name.text
  if (old.module.text !== now.module.text)
    return { edits: [moduleEdit(old, now, shown(block))], written: [], order: false, checks: new Map() }
  const names = (of: CalcBlock): string[] => of.inputs.map(({ key }) => key.text)
  const edits: Edit[] = []
  const written: string[] = []
  for (const name of new Set([...names(now), ...names(old)])) {
    const [a, b] = [inputOf(old, name), inputOf(now, name)]
    const about = { old, now, shown, input: name }
    const parts = rowwise(a, b, block) ?? [{ name, ...(a && { a }), ...(b && { b }) }]
    const moved = parts.filter(part => isMoved(part, block))
    const rows = wholeRowEdits(a, b, about)
    edits.push(...moved.map(part => inputEdit(part, about)), ...rows)
    if (moved.length + rows.length === 0 && a && b && entryText(a.value) !== entryText(b.value))
      written.push(shown(`${block}.${name}`))
  }
  return { edits, written, order: reordered(names(old), names(now)), checks: new Map() }
}

const inputOf = (block: CalcBlock, name: string): Keyed | undefined => block.inputs.find(({ key }) => key.text === name)

function isMoved({ a, b }: Compared, block: string): boolean {
  const means = (keyed: Keyed | undefined): string =>
    keyed ? entryMeaning(keyed.value, { block, renames: noRenames }) : ''
  return means(a) !== means(b)
}
