import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { isEqual } from '../quantity/tolerance.ts'
import type { Draft } from './draft.ts'
import { readLiteral } from './literal.ts'
import type { Entity } from './plan-types.ts'

/** A value that stands in the notebook as such, so that it is known before anything is worked out. */
export interface Stated {
  readonly si: number
  readonly dimension: Entity['dimension']
  readonly point: boolean
}

/** The assumption or typed input that a number is, or hands on unchanged; nothing where it is worked out. */
export function statedIn(entity: Entity): Entity | undefined {
  const { same, typed } = entity
  return same ? statedIn(same) : typed && entity
}

/** The word that reads as the quantity of this value, `12 mm` for 0.012 m. */
export const wordOf = (words: readonly string[], { si, dimension, point }: Stated): string | undefined =>
  words.find(word => {
    const own = readLiteral(word)
    return own?.dimension === dimension && own.point === point && isEqual(own.si, si)
  })

/** Words either side of this value, the lower one first; none where no word is of its dimension. */
export function wordsBeside(words: readonly string[], { si, dimension, point }: Stated): readonly string[] {
  const like = words
    .flatMap(word => {
      const own = readLiteral(word)
      return own?.dimension === dimension && own.point === point ? [{ word, si: own.si }] : []
    })
    .sort((a, b) => a.si - b.si)
  const beside = [like.findLast(each => each.si < si), like.find(each => each.si > si)]
  return beside.flatMap(each => (each ? [each.word] : []))
}

/** Says of each plausible range that nothing is moved over it, since a choice is taken from the value. */
export function warnFixed({ notebook, chosen, diagnostics }: Draft): void {
  for (const [entity, by] of chosen) {
    const block = notebook.blocks[entity.block]
    const row = block?.kind === 'assume' && block.assumptions.find(({ name }) => name.text === entity.name)
    if (!row || row.range === undefined) continue
    const says = `\`${entity.key}\` is not moved over its range: \`${by}\` takes it from a list`
    const fault: Diagnostic = { rule: 'assumption-range', severity: 'warning', place: row.range.from.place, says }
    diagnostics.push({ ...fault, help: 'Write another value to see what it changes' })
  }
}
