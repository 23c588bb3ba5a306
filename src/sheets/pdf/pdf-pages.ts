import { isDictionary, isReference, type PdfValue } from './pdf-object.ts'
import { UnreadablePdf } from './print-failure.ts'
import { dictionaryOf, entryOf, resolve, type SkiaPdf } from './skia-pdf.ts'

/** On which page (from 1) each linked place of the document fell, and how many pages there are. */
export interface PageNumbers {
  readonly pages: number
  readonly pageOf: Readonly<Record<string, number>>
  /** How many pages stand before each part of the document. */
  readonly before: readonly number[]
}

/** Returns the object numbers of the pages, in their order. Throws `UnreadablePdf`. */
export function pageObjects(pdf: SkiaPdf): number[] {
  const pages = dictionaryOf(pdf, pdf.root).entries.get('Pages')
  return isReference(pages) ? pagesUnder(pdf, pages.object) : []
}

function pagesUnder(pdf: SkiaPdf, number: number): number[] {
  const kids = entryOf(pdf, dictionaryOf(pdf, number), 'Kids')
  if (kids === undefined) return [number]
  if (!Array.isArray(kids)) throw new UnreadablePdf(`the page tree is broken at object ${number}`)
  return kids.filter(isReference).flatMap(kid => pagesUnder(pdf, kid.object))
}

/**
 * Returns the page of every name in the file. Chromium writes a name for each id that some link of the document points at,
 * percent-encoded as in the link. Throws `UnreadablePdf`.
 */
export function readPageNumbers(pdf: SkiaPdf): PageNumbers {
  const pages = pageObjects(pdf)
  const place = new Map(pages.map((object, index) => [object, index + 1]))
  const names = resolve(pdf, dictionaryOf(pdf, pdf.root).entries.get('Dests'))
  const entries = isDictionary(names) ? [...names.entries] : []
  return {
    pages: pages.length,
    before: [0],
    pageOf: Object.fromEntries(entries.map(([name, where]) => [decodeName(name), pageAt(where)])),
  }

  function pageAt(where: PdfValue): number {
    const target = resolve(pdf, where)
    const page = Array.isArray(target) ? target[0] : undefined
    const number = isReference(page) ? place.get(page.object) : undefined
    if (number === undefined) throw new UnreadablePdf('a name in the PDF leads to no page')
    return number
  }
}

/** Returns the same of a document that was printed in parts. */
export function partedNumbers(parts: readonly { readonly skia: SkiaPdf }[]): PageNumbers {
  let pages = 0
  const before: number[] = []
  const pageOf: Record<string, number> = {}
  for (const { skia } of parts) {
    const part = readPageNumbers(skia)
    for (const [name, page] of Object.entries(part.pageOf)) pageOf[name] = pages + page
    before.push(pages)
    pages += part.pages
  }
  return { pages, pageOf, before }
}

/** Returns a name without the percent signs with which a link writes it. */
export function decodeName(name: string): string {
  try {
    return decodeURIComponent(name)
  } catch {
    return name
  }
}
