import { catalogOf, dictionaryIn, type Joining, put, referenceIn, rewrite } from './joining.ts'
import { linkedNames } from './linked-names.ts'
import type { PdfValue } from './pdf-object.ts'

/** Makes one table of the named places of the parts, of those that some link of the whole leads to. */
export function joinNames(joining: Joining): void {
  const wanted = new Set(joining.parts.flatMap(({ pdf }) => linkedNames(pdf)))
  const places = new Map<string, PdfValue>()
  for (const part of joining.parts) {
    const at = referenceIn(joining, part, catalogOf(part), 'Dests')
    if (!at) continue
    joining.left.add(at.object)
    for (const [name, place] of dictionaryIn(joining, part, at).entries) if (wanted.has(name)) places.set(name, place)
  }
  const [first] = joining.parts
  if (!first || places.size === 0) return
  const entries = new Map([...places].sort(([a], [b]) => (a < b ? -1 : 1)))
  const Dests = put(joining, { kind: 'dictionary', entries })
  rewrite(joining, first, { at: catalogOf(first), entries: { Dests } })
}
