import { FIRST_LINK, type Move, movedObject } from './move-object.ts'
import { parsePdfValue } from './parse-pdf-object.ts'
import { isDictionary, isReference, type PdfDictionary, type PdfReference, type PdfValue } from './pdf-object.ts'
import { pageObjects } from './pdf-pages.ts'
import { UnreadablePdf } from './print-failure.ts'
import { entryOf, objectOf, rawObject, type SkiaPdf } from './skia-pdf.ts'

/** A part of a document, and how its objects move. */
export interface Part {
  readonly pdf: SkiaPdf
  readonly move: Move
}

/** PDFs on their way to be one: what becomes of the objects that hold each together. All numbers are those of the joined file. */
export interface Joining {
  readonly parts: readonly Part[]
  /** Objects written anew. */
  readonly values: Map<number, PdfValue>
  /** Objects that only their own part needed. */
  readonly left: Set<number>
  /** One more than the highest number so far. */
  size: number
}

/** The parts in their order, each moved behind those before it. Throws `UnreadablePdf`. */
export function joiningOf(pdfs: readonly SkiaPdf[]): Joining {
  const parts: Part[] = []
  let move: Move = { by: 0, pages: 0, links: 0, part: 0 }
  for (const pdf of pdfs) {
    parts.push({ pdf, move })
    const { by, pages, links, part } = move
    move = {
      by: by + pdf.size - 1,
      pages: pages + pageObjects(pdf).length,
      links: links + linkKeys(pdf),
      part: part + 1,
    }
  }
  return { parts, values: new Map(), left: new Set(), size: move.by + 1 }
}

/** How many keys the links of a part take up. */
function linkKeys(pdf: SkiaPdf): number {
  const structure = entryOf(pdf, objectOf(pdf, pdf.root), 'StructTreeRoot')
  const keys = entryOf(pdf, entryOf(pdf, structure, 'ParentTree'), 'Nums')
  const last = Array.isArray(keys) ? keys.at(-2) : undefined
  return typeof last === 'number' && last >= FIRST_LINK ? last - FIRST_LINK + 1 : 0
}

/** Puts a value into the joined file and returns its number. */
export function put(joining: Joining, value: PdfValue): PdfReference {
  const number = joining.size
  joining.values.set(number, value)
  joining.size += 1
  return { kind: 'reference', object: number }
}

/** The dictionary that an object of a part is, or has become, in the joined file. Throws `UnreadablePdf` where it is none. */
export function dictionaryIn(joining: Joining, part: Part, { object }: PdfReference): PdfDictionary {
  const value =
    joining.values.get(object) ?? parsePdfValue(movedObject(rawObject(part.pdf, object - part.move.by), part.move), 0)
  if (!isDictionary(value)) throw new UnreadablePdf(`object ${object} is not a dictionary`)
  return value
}

/** Writes some entries of a dictionary anew. */
export function rewrite(
  joining: Joining,
  part: Part,
  { at, entries }: { readonly at: PdfReference; readonly entries: Readonly<Record<string, PdfValue>> },
): void {
  const kept = dictionaryIn(joining, part, at).entries
  joining.values.set(at.object, { kind: 'dictionary', entries: new Map([...kept, ...Object.entries(entries)]) })
}

/** The catalog of a part. */
export const catalogOf = ({ pdf, move }: Part): PdfReference => ({ kind: 'reference', object: pdf.root + move.by })

/** What an entry of an object refers to; nothing where it is not there. */
export function referenceIn(joining: Joining, part: Part, at: PdfReference, key: string): PdfReference | undefined {
  const value = dictionaryIn(joining, part, at).entries.get(key)
  return isReference(value) ? value : undefined
}
