import { joinNames } from './join-names.ts'
import { joinOutline } from './join-outline.ts'
import { joinStructure } from './join-structure.ts'
import { catalogOf, dictionaryIn, type Joining, joiningOf, put, referenceIn, rewrite } from './joining.ts'
import { type Move, movedObject } from './move-object.ts'
import { nameEntries } from './outline-titles.ts'
import { pdfDictionary, pdfName } from './pdf-object.ts'
import { UnreadablePdf } from './print-failure.ts'
import { objectsOf, type SkiaPdf } from './skia-pdf.ts'
import { writePdfValue } from './write-pdf-object.ts'

/** A part of a document as it was printed, with the words of its headings. */
export interface PrintedPart {
  readonly skia: SkiaPdf
  readonly headings: readonly string[]
}

/**
 * Returns one PDF of several that Chromium printed as parts of one document, their pages one after another: links lead from part to part by name,
 * the entries of the outline stand under the last of the first part, and the structure is one. It is in Chromium's own plain form, as if printed
 * together. Throws `UnreadablePdf` where a part is in another form.
 */
export function joinPdfs(printed: readonly PrintedPart[]): Uint8Array {
  const joining = joiningOf(printed.map(({ skia }) => skia))
  const [first, ...others] = joining.parts
  if (!first) throw new RangeError('expected a PDF at least')
  joinPages(joining)
  joinNames(joining)
  joinStructure(joining)
  for (const [place, part] of joining.parts.entries()) nameEntries(joining, part, printed[place]?.headings ?? [])
  joinOutline(joining)
  for (const { pdf, move } of others) joining.left.add(pdf.root + move.by).add(pdf.info + move.by)
  return written(joining, first.pdf)
}

function joinPages(joining: Joining): void {
  const roots = joining.parts.map(part => {
    const at = referenceIn(joining, part, catalogOf(part), 'Pages')
    if (!at) throw new UnreadablePdf('the PDF has no pages')
    return { part, at }
  })
  const counts = roots.map(({ part, at }) => Number(dictionaryIn(joining, part, at).entries.get('Count')))
  const count = counts.reduce((sum, pages) => sum + pages, 0)
  const whole = put(joining, pdfDictionary({ Type: pdfName('Pages'), Count: count, Kids: roots.map(({ at }) => at) }))
  for (const { part, at } of roots) rewrite(joining, part, { at, entries: { Parent: whole } })
  const [first] = joining.parts
  if (first) rewrite(joining, first, { at: catalogOf(first), entries: { Pages: whole } })
}

/** The file: objects as they stand but for their numbers, then those written anew. */
function written({ parts, values, left, size }: Joining, { text, root, info }: SkiaPdf): Uint8Array {
  const pieces: string[] = []
  const offsets = new Array<number>(size).fill(0)
  let at = 0
  const add = (piece: string, number?: number): void => {
    if (number !== undefined) offsets[number] = at
    at += piece.length
    pieces.push(piece)
  }
  add(text.slice(0, text.indexOf('\n1 0 obj\n') + 1))
  for (const part of parts)
    for (const { number, from, to } of objectsOf(part.pdf)) {
      const moved = number + part.move.by
      if (!left.has(moved) && !values.has(moved)) add(movedText(part.pdf.text.slice(from, to), part.move), moved)
    }
  for (const [number, value] of values) add(`${number} 0 obj\n${writePdfValue(value)}\nendobj\n`, number)
  const tail = `trailer\n<</Size ${size}\n/Root ${root} 0 R\n/Info ${info} 0 R>>\nstartxref\n${at}\n%%EOF\n`
  add(crossReferenceTable(offsets))
  return Buffer.from(`${pieces.join('')}${tail}`, 'latin1')
}

/** An object with its new number; what its stream holds stays as it is. */
function movedText(text: string, move: Move): string {
  const data = text.indexOf('>> stream\n')
  const [about, stream] = data < 0 ? [text, ''] : [text.slice(0, data), text.slice(data)]
  const head = about.indexOf(' ')
  return `${Number(about.slice(0, head)) + move.by}${movedObject(about.slice(head), move)}${stream}`
}

function crossReferenceTable(offsets: readonly number[]): string {
  const rows = offsets.map(offset =>
    offset > 0 ? `${String(offset).padStart(10, '0')} 00000 n \n` : '0000000000 65535 f \n',
  )
  return `xref\n0 ${offsets.length}\n${rows.join('')}`
}
