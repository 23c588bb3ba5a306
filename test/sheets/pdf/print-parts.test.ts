import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  type OpenBrowser,
  openBrowser,
  type Part,
  type PrintedPackage,
  type PrintFailure,
} from '../../../src/sheets/pdf/index.ts'
import { openWithPdfjs, pageTexts } from './read-with-pdfjs.ts'
import { documentWith, packageOf, SAMPLE_FONTS } from './sample-document.ts'

let browser: OpenBrowser
let whole: PrintedPackage
let joined: PrintedPackage

/** Sections 1 to 3, 4 to 6 and 7 to 9 behind their contents, with links back and forth. */
const html = packageOf(9)
  .replace('</h2>', '</h2><p><a href="#s-8">Forward</a></p>')
  .replace('<h2 id="s-7">', '<h2 id="s-7"><a href="#s-2">Back</a> ')
const long = 'A heading of so many words that it has to be broken at the end of its first line'

function partsOf(text: string, ...ids: readonly string[]): string[] {
  const [head = '', rest = ''] = text.split('<body>')
  const body = rest.slice(0, rest.lastIndexOf('</body>'))
  const starts = [0, ...ids.map(id => body.indexOf(`<h2 id="${id}"`)), body.length]
  return starts.slice(1).map((end, part) => `${head}<body>${body.slice(starts[part], end)}</body></html>`)
}

const parts = partsOf(html, 's-1', 's-4', 's-7')

async function print(document: string | readonly Part[], guess?: PrintedPackage): Promise<PrintedPackage> {
  return printed(await browser.print(document, { fonts: SAMPLE_FONTS, ...(guess ? { guess } : {}) }))
}

function printed(result: PrintedPackage | PrintFailure): PrintedPackage {
  if (!result.ok) throw new Error(`${result.reason}: ${result.says}`)
  return result
}

const withoutDates = (pdf: Uint8Array): string =>
  Buffer.from(pdf)
    .toString('latin1')
    .replace(/\(D:\d{14}/g, '(D:')

beforeAll(async () => {
  const opened = await openBrowser({ variables: process.env })
  if (!opened.ok) throw new Error(`${opened.says}\n${opened.help}`)
  browser = opened
  whole = await print(html)
  joined = await print(parts)
})

afterAll(() => browser?.close())

async function pageOf(document: PDFDocumentProxy, dest: unknown): Promise<number> {
  const place = typeof dest === 'string' ? await document.getDestination(dest) : (dest as unknown[])
  return 1 + (await document.getPageIndex(place?.[0] as Parameters<PDFDocumentProxy['getPageIndex']>[0]))
}

/** The outline with pages for places. */
async function outlineOf(document: PDFDocumentProxy, items?: Awaited<ReturnType<PDFDocumentProxy['getOutline']>>) {
  const entries: unknown[] = []
  for (const { title, dest, items: under } of items ?? (await document.getOutline()))
    entries.push([title, await pageOf(document, dest), await outlineOf(document, under)])
  return entries
}

async function linksOf(document: PDFDocumentProxy): Promise<string[]> {
  const links: string[] = []
  for (let number = 1; number <= document.numPages; number += 1)
    for (const { dest, rect } of await (await document.getPage(number)).getAnnotations())
      links.push(`${number} ${rect} to ${await pageOf(document, dest)}`)
  return links
}

/** The structure of each page, without the numbers that its objects have in the file. */
async function structuresOf(document: PDFDocumentProxy): Promise<string[]> {
  const trees: string[] = []
  for (let number = 1; number <= document.numPages; number += 1)
    trees.push(JSON.stringify(await (await document.getPage(number)).getStructTree()).replaceAll(/p?\d+R_?/g, ''))
  return trees
}

describe('a document in parts', () => {
  test('reads as if it had been printed whole: text, numbers of the sheets, contents', async () => {
    expect(joined.pages).toBe(whole.pages)
    expect(joined.pageOf).toEqual(expect.objectContaining(whole.pageOf))
    expect(await pageTexts(joined.pdf)).toEqual(await pageTexts(whole.pdf))
  })

  test('has the outline, the links and the structure of the whole, as an outside reader finds them', async () => {
    const [of, to] = [await openWithPdfjs(joined.pdf), await openWithPdfjs(whole.pdf)]
    expect(await outlineOf(of)).toEqual(await outlineOf(to))
    const links = await linksOf(of)
    expect(links.length).toBe(11)
    expect(links).toEqual(await linksOf(to))
    const structures = await structuresOf(of)
    expect(structures.join('')).toContain('TH')
    expect(structures).toEqual(await structuresOf(to))
  })

  test('needs two prints without a guess, one with the right one, two where the pages before a part have changed', async () => {
    const right = await print(parts, joined)
    const wrong = await print(parts, { ...joined, before: [0, 3, 4, 5] })
    const whatElse = await print(parts, { ...joined, before: [0] })
    expect([joined.prints, right.prints, wrong.prints, whatElse.prints]).toEqual([2, 1, 2, 2])
    for (const other of [right, wrong, whatElse]) expect(withoutDates(other.pdf)).toBe(withoutDates(joined.pdf))
  })

  test('names a heading in the outline by its words, wherever its lines end', async () => {
    const wide = '<h2 id="s-9" style="font-size:40pt">'
    const pair = partsOf(packageOf(9).replace(/<h2 id="s-9">[^<]*/, `${wide}${long}`), 's-4')
    const outline = await (await openWithPdfjs((await print(pair)).pdf)).getOutline()
    expect(outline[0]?.items.at(-1)?.title).toBe(long)
  })

  test('is given to the browser in the order that is wanted, each part found out when its turn comes', async () => {
    const asked: string[] = []
    const [front = '', first = '', second = '', last = ''] = parts
    const late = (name: string, text: string) => async () => {
      asked.push(name)
      return text
    }
    const document = [late('front', front), first, late('second', second), late('last', last)]
    const meanwhile = () => void asked.push('meanwhile')
    const order = [1, 2, 0, 3]
    const result = printed(await browser.print(document, { fonts: SAMPLE_FONTS, guess: joined, order, meanwhile }))
    expect(asked).toEqual(['second', 'front', 'last', 'meanwhile'])
    expect(withoutDates(result.pdf)).toBe(withoutDates(joined.pdf))
  })

  test('what finding a part throws comes out as it is', async () => {
    const fault = new RangeError('not found out')
    const late = () => Promise.reject(fault)
    await expect(browser.print([parts[0] ?? '', late], { fonts: SAMPLE_FONTS })).rejects.toBe(fault)
  })

  test('a character outside the faces is told once, with all that the parts draw in its font', async () => {
    const strays = [documentWith('<p>Words and Ж</p>'), documentWith('<p>Words, Ж and Я</p>')]
    expect(await browser.print(strays, { fonts: SAMPLE_FONTS })).toMatchObject({
      says: "characters fell to fonts that are not the package's own: `OpenSans-Regular` for `Ж` `Я`",
    })
  })

  test('a link to what no part has is refused by its name', async () => {
    const lost = [documentWith('<p><a href="#gone%20by">Where</a></p>'), documentWith('<p>Words</p>')]
    expect(await browser.print(lost, { fonts: SAMPLE_FONTS })).toMatchObject({
      ok: false,
      reason: 'check-failed',
      says: 'a link leads to `#gone by`, and nothing in the package has that name',
    })
  })
})
