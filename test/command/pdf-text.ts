import { readFileSync } from 'node:fs'
import { inflateSync } from 'node:zlib'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** The text of every page of a PDF. */
export async function pageTexts(path: string): Promise<string[]> {
  const task = getDocument({ data: new Uint8Array(readFileSync(path)), verbosity: 0 })
  const document = await task.promise
  const texts: string[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent()
    texts.push(items.map(item => ('str' in item ? item.str : '')).join(' '))
  }
  await task.destroy()
  return texts
}

/** Everything a PDF holds, its packed streams unpacked, as bytes in a string. */
export function unpacked(pdf: Uint8Array): string {
  const bytes = Buffer.from(pdf)
  const text = bytes.toString('latin1')
  const streams = [...text.matchAll(/stream\r?\n/g)].map(({ index, 0: head }) => {
    try {
      return inflateSync(bytes.subarray(index + head.length), { finishFlush: 2 }).toString('latin1')
    } catch {
      return ''
    }
  })
  return [text, ...streams].join('\n')
}
