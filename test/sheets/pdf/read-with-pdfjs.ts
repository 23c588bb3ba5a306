import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Opens a PDF with an outside reader; the reader takes the bytes for itself, so it gets a copy. */
export function openWithPdfjs(pdf: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: pdf.slice(), verbosity: 0 }).promise
}

/** Returns the text of each page, as the outside reader finds it. */
export async function pageTexts(pdf: Uint8Array): Promise<string[]> {
  const document = await openWithPdfjs(pdf)
  const texts: string[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const content = await (await document.getPage(number)).getTextContent()
    texts.push(content.items.map(item => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''))
  }
  await document.destroy()
  return texts
}
