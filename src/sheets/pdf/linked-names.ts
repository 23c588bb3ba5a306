import { isName, isReference } from './pdf-object.ts'
import { pageObjects } from './pdf-pages.ts'
import { dictionaryOf, entryOf, type SkiaPdf } from './skia-pdf.ts'

/** Returns the names that the links of the pages lead to, as they stand in the file. Throws `UnreadablePdf`. */
export function linkedNames(pdf: SkiaPdf): string[] {
  const names = new Set<string>()
  for (const page of pageObjects(pdf)) {
    const links = entryOf(pdf, dictionaryOf(pdf, page), 'Annots')
    for (const link of Array.isArray(links) ? links.filter(isReference) : []) {
      const to = entryOf(pdf, link, 'Dest')
      if (isName(to)) names.add(to.name)
    }
  }
  return [...names]
}
