/** What a reader finds in a PDF. */
export interface ReadPdf {
  /** The pieces of text of each page, in the order they are drawn. */
  readonly pages: readonly (readonly string[])[]
  readonly attachments: ReadonlyMap<string, Uint8Array>
}

/** Reads the text and the attachments of any PDF, our own or a changed one, with a reader that is not ours; or says why it cannot be read. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf | { readonly unread: string }> {
  const worker = await import('pdfjs-dist/legacy/build/pdf.worker.min.mjs')
  Object.assign(globalThis, { pdfjsWorker: worker })
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs')
  const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0, useSystemFonts: false })
  try {
    const document = await task.promise
    const pages: string[][] = []
    for (let number = 1; number <= document.numPages; number += 1) {
      const { items } = await (await document.getPage(number)).getTextContent()
      pages.push(items.flatMap(item => ('str' in item && item.str.trim() !== '' ? [item.str] : [])))
    }
    return { pages, attachments: attachmentsOf(await document.getAttachments()) }
  } catch (thrown) {
    return { unread: whyUnread(thrown) }
  } finally {
    await task.destroy()
  }
}

const whyUnread = (thrown: unknown): string =>
  thrown instanceof Error && thrown.name === 'PasswordException'
    ? 'it is locked with a password'
    : 'it cannot be read as a PDF, perhaps because it is cut short'

function attachmentsOf(found: unknown): Map<string, Uint8Array> {
  const files = Object.values((found ?? {}) as Record<string, { filename: string; content: Uint8Array }>)
  return new Map(files.map(({ filename, content }) => [filename, content]))
}
