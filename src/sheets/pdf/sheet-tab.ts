import type { Browser, HTTPRequest, Page } from 'puppeteer-core'
import type { PageNumbers } from './pdf-pages.ts'
import { BrowserTrouble, messageOf } from './print-failure.ts'

/** The number cells of a document: the ids whose page is wanted, and whether the page count is. */
export interface NumberCells {
  readonly ids: readonly string[]
  readonly count: boolean
}

/** A print that the browser works at; until it is done, nothing is wanted of this process. */
export interface Printing {
  readonly pdf: Promise<Uint8Array>
}

/** One document in one tab of the browser. Every call throws `BrowserTrouble` where the browser fails. */
export interface SheetTab {
  /** Shows a document that was loaded with `hidden` on its root. */
  show(): Promise<void>
  cells(): Promise<NumberCells>
  /** The words of the headings, in their order. */
  headings(): Promise<readonly string[]>
  /** The text that the print layout shows. */
  text(): Promise<string>
  /** Sets the numbers into their cells; where the document is a part of a whole, the number of its first page and that of all pages into the margins too. */
  fill(numbers: PageNumbers, part?: number): Promise<void>
  /** Has the browser begin to print, with tags and outline where it is to be the final PDF (they cost a tenth to a quarter more time). */
  print(final: boolean): Promise<Printing>
  close(): Promise<void>
}

/** Opens a file in a new tab: scripts off, no request but for the file itself. */
export async function openTab(browser: Browser, url: string): Promise<SheetTab> {
  const page = await guarded(() => browser.newPage())
  try {
    await guarded(() => load(page, url))
  } catch (thrown) {
    await page.close().catch(() => undefined)
    throw thrown
  }
  return {
    show: () => guarded(() => page.evaluate(showRoot)),
    cells: () => guarded(() => page.evaluate(readCells)),
    headings: () => guarded(() => page.evaluate(readHeadings)),
    // biome-ignore lint/performance/useDomNodeTextContent: hidden text is not printed
    text: () => guarded(() => page.evaluate(() => document.body.innerText)),
    // A guess may be a whole earlier print: its PDF must not travel to the browser.
    fill: async ({ pages, pageOf, before }, part) => {
      await guarded(() => page.evaluate(fillCells, { pages, pageOf }))
      if (part !== undefined) await guarded(() => page.evaluate(countOn, { pages, before: before[part] ?? 0 }))
    },
    print: async final => {
      await guarded(() => page.evaluate(fontsReady))
      const pdf = guarded(() => page.pdf(pdfOptions(final)))
      pdf.catch(() => undefined)
      return { pdf }
    },
    close: () => guarded(() => page.close()),
  }
}

async function guarded<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (thrown) {
    throw new BrowserTrouble(messageOf(thrown), { cause: thrown })
  }
}

async function load(page: Page, url: string): Promise<void> {
  page.setDefaultTimeout(0)
  await page.setJavaScriptEnabled(false)
  await page.setRequestInterception(true)
  page.on('request', request => void answer(request, url))
  await page.emulateMediaType('print')
  await page.goto(url, { waitUntil: 'load', timeout: 0 })
  await page.evaluate(loadFaces)
}

/** Data inside the file is no request. An answer may come too late, when the tab is already closed. */
function answer(request: HTTPRequest, url: string): Promise<void> {
  const allowed = request.url() === url || request.url().startsWith('data:')
  return (allowed ? request.continue() : request.abort('blockedbyclient')).catch(() => undefined)
}

function pdfOptions(final: boolean): Parameters<Page['pdf']>[0] {
  return {
    preferCSSPageSize: true,
    printBackground: true,
    tagged: final,
    outline: final,
    timeout: 0,
    waitForFonts: false,
  }
}

/** Runs in the page. A face that only the page margins use is not loaded by itself, and they would print in the fall-back font. */
async function loadFaces(): Promise<void> {
  const faces = Array.from(document.fonts as unknown as Iterable<FontFace>)
  await Promise.allSettled(faces.map(face => face.load()))
}

/** Runs in the page. Waited for apart, so that a print begins when it is asked for. */
async function fontsReady(): Promise<void> {
  await document.fonts.ready
}

/** Runs in the page. */
function showRoot(): void {
  document.documentElement.hidden = false
}

/** Runs in the page. */
function readCells(): NumberCells {
  const cells = Array.from(document.querySelectorAll('.page-of[data-page-of]'))
  const ids = cells.map(cell => cell.getAttribute('data-page-of') ?? '')
  return { ids: [...new Set(ids)], count: document.querySelector('.page-count') !== null }
}

/** Runs in the page. */
function readHeadings(): string[] {
  return Array.from(document.querySelectorAll('h1, h2, h3, h4, h5, h6'), heading => heading.textContent ?? '')
}

/** Runs in the page. A number not yet known is a 0: a cell never stands empty, so no line is lower than it will be. */
function fillCells(numbers: Pick<PageNumbers, 'pages' | 'pageOf'>): void {
  for (const cell of Array.from(document.querySelectorAll('.page-of[data-page-of]'))) {
    cell.textContent = String(numbers.pageOf[cell.getAttribute('data-page-of') ?? ''] ?? 0)
  }
  for (const cell of Array.from(document.querySelectorAll('.page-count'))) cell.textContent = String(numbers.pages)
}

/** Runs in the page. The browser knows the pages of this part alone: it counts on from those before, and the number of all is written where it would count them. */
function countOn({ pages, before }: { readonly pages: number; readonly before: number }): void {
  document.documentElement.style.counterReset = `page ${before}`
  for (const style of Array.from(document.querySelectorAll('style'))) {
    const text = style.textContent ?? ''
    const told = text.replaceAll(/counter\(pages\)|"\d+"\/\*pages\*\//g, `"${pages}"/*pages*/`)
    if (told !== text) style.textContent = told
  }
}
