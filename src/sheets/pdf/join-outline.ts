import { catalogOf, dictionaryIn, type Joining, type Part, referenceIn, rewrite } from './joining.ts'
import type { PdfReference } from './pdf-object.ts'
import { UnreadablePdf } from './print-failure.ts'

/** An outline, or an entry with others under it. */
interface Entries {
  readonly part: Part
  readonly at: PdfReference
}

/** Puts the entries of the later outlines under the last entry of the first one, the title of the whole. */
export function joinOutline(joining: Joining): void {
  const [first, ...others] = joining.parts.flatMap((part): Entries[] => {
    const at = referenceIn(joining, part, catalogOf(part), 'Outlines')
    return at ? [{ part, at }] : []
  })
  if (!first) return
  const title = referenceIn(joining, first.part, first.at, 'Last')
  if (!title) throw new UnreadablePdf('the outline of the PDF is empty')
  for (const other of others) {
    const more = countOf(joining, other)
    append(joining, { part: first.part, at: title }, other)
    for (const at of [title, first.at])
      rewrite(joining, first.part, { at, entries: { Count: countOf(joining, { part: first.part, at }) + more } })
    joining.left.add(other.at.object)
  }
}

function append(joining: Joining, to: Entries, from: Entries): void {
  const [head, tail] = ['First', 'Last'].map(key => referenceIn(joining, from.part, from.at, key))
  if (!head || !tail) throw new UnreadablePdf('the outline of the PDF is empty')
  for (let at: PdfReference | undefined = head; at; at = referenceIn(joining, from.part, at, 'Next'))
    rewrite(joining, from.part, { at, entries: { Parent: to.at } })
  const before = referenceIn(joining, to.part, to.at, 'Last')
  if (before) {
    rewrite(joining, partOf(joining, before), { at: before, entries: { Next: head } })
    rewrite(joining, from.part, { at: head, entries: { Prev: before } })
  }
  rewrite(joining, to.part, { at: to.at, entries: { ...(before ? {} : { First: head }), Last: tail } })
}

/** The entry that stood last may be of any part. */
function partOf({ parts }: Joining, { object }: PdfReference): Part {
  const part = parts.findLast(({ move }) => object > move.by)
  if (!part) throw new UnreadablePdf(`object ${object} is in no part`)
  return part
}

/** Entries that are shown under this one: all, as Chromium leaves them. */
function countOf(joining: Joining, { part, at }: Entries): number {
  const count = dictionaryIn(joining, part, at).entries.get('Count')
  return typeof count === 'number' ? count : 0
}
