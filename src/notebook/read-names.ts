import { itemsOf, scalarOf } from './entry-parts.ts'
import type { TitleValue } from './title-values.ts'
import type { Written } from './types.ts'

const rule = 'front-matter-value'

/** Returns names with their places: one, or a list of them. Leaves empty ones out. */
export function readNames(value: TitleValue): readonly Written[] {
  const items = value.entry.kind === 'scalar' ? [value.entry] : (itemsOf(value.entry, { rule, ...value }) ?? [])
  return items.flatMap(entry => {
    const written = scalarOf(entry, { rule, ...value })
    return written?.text ? [written] : []
  })
}
