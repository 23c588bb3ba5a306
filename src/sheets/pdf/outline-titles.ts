import { catalogOf, dictionaryIn, type Joining, type Part, referenceIn, rewrite } from './joining.ts'
import type { PdfReference, PdfValue } from './pdf-object.ts'
import { pdfText } from './write-pdf-object.ts'

/**
 * Gives the entries of a part's outline the words of its headings. Chromium gathers them from what it paints: twice where a heading was laid out again
 * for the next page, and without the space at the end of a line. An entry that has other words than its heading keeps them.
 */
export function nameEntries(joining: Joining, part: Part, headings: readonly string[]): void {
  const outline = referenceIn(joining, part, catalogOf(part), 'Outlines')
  const entries = outline ? entriesUnder(joining, part, outline) : []
  if (entries.length !== headings.length) return
  for (const [index, at] of entries.entries()) {
    const heading = (headings[index] ?? '').replaceAll(/\s+/g, ' ').trim()
    const title = bare(textOf(dictionaryIn(joining, part, at).entries.get('Title')))
    const words = bare(heading)
    if (title === words || title === words + words) rewrite(joining, part, { at, entries: { Title: pdfText(heading) } })
  }
}

/** All entries under one, in the order in which they are read. */
function entriesUnder(joining: Joining, part: Part, above: PdfReference): PdfReference[] {
  const entries: PdfReference[] = []
  for (let at = referenceIn(joining, part, above, 'First'); at; at = referenceIn(joining, part, at, 'Next'))
    entries.push(at, ...entriesUnder(joining, part, at))
  return entries
}

const bare = (text: string): string => text.replaceAll(/\s/g, '')

/** A text string of PDF. Source: ISO 32000-1, 7.9.2.2. */
function textOf(value: PdfValue | undefined): string {
  const bytes = typeof value === 'object' && value !== null && 'bytes' in value ? value.bytes : ''
  return bytes.startsWith('\xFE\xFF') ? Buffer.from(bytes.slice(2), 'latin1').swap16().toString('utf16le') : bytes
}
