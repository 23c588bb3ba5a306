import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'puppeteer-core'
import { checkPdf } from './check-pdf.ts'
import type { PageNumbers } from './pdf-pages.ts'
import {
  BrowserTrouble,
  messageOf,
  type PrintFailure,
  printFailure,
  systemCode,
  UnreadablePdf,
} from './print-failure.ts'
import { printScale } from './print-scale.ts'
import { settleNumbers } from './settle-numbers.ts'
import { openTab, type SheetTab } from './sheet-tab.ts'
import { steadyNodeNames } from './steady-node-names.ts'

/** What a print needs besides its document. */
export interface PrintOptions {
  /** Names of the fonts that may be in the PDF; a star at the end stands for any ending (`KaTeX_*`). */
  readonly fonts: readonly string[]
  /** The page numbers of an earlier print of the document: right ones save a print, wrong ones do no harm. */
  readonly guess?: PageNumbers
  /**
   * Sheets that stand empty in the document, by id, with their HTML, which takes their places once the document is loaded. Asked for when the
   * browser begins to load, so that there is time to find out what they say.
   */
  readonly late?: () => Promise<ReadonlyMap<string, string>>
  /** Work of the caller's that is done while the browser is at the first print. What it throws ends the printing. */
  readonly meanwhile?: () => void
}

/** A PDF that passed its checks, with the numbers to guess from the next time. */
export interface PrintedPackage extends PageNumbers {
  readonly ok: true
  readonly pdf: Uint8Array
  /** At which part of its size all was printed; undefined where this cannot be read. */
  readonly scale: number | undefined
  /** How often the browser printed. */
  readonly prints: number
}

interface PrintPlace extends PrintOptions {
  readonly tabs: Browser
  readonly folder: string
}

/** Prints a document in a tab of its own and checks the PDF. A file is loaded far faster than text handed to the browser. */
export async function printInTab(html: string, place: PrintPlace): Promise<PrintedPackage | PrintFailure> {
  let folder: string | undefined
  let tab: SheetTab | undefined
  try {
    folder = await mkdtemp(join(place.folder, 'page-'))
    const file = join(folder, 'package.html')
    await writeFile(file, hidden(html))
    const late = place.late?.()
    late?.catch(() => undefined)
    tab = await openTab(place.tabs, pathToFileURL(file).href)
    if (late) await tab.put(await late)
    await tab.show()
    return await printAndCheck(tab, place)
  } catch (thrown) {
    return refusalFor(thrown)
  } finally {
    await tab?.close().catch(() => undefined)
    if (folder !== undefined) await rm(folder, { recursive: true, force: true })
  }
}

/**
 * The document with its root hidden until all of it is there. Otherwise the browser lays out what it has read so far whenever it stops reading,
 * and the line at which it stopped may stand an eighth of a pixel off: other bytes from one print to the next.
 */
function hidden(html: string): string {
  const root = /<html(?=[\s>])/
  if (!root.test(html)) throw new RangeError('expected a document with an `html` element')
  return html.replace(root, '<html hidden')
}

async function printAndCheck(tab: SheetTab, options: PrintOptions): Promise<PrintedPackage | PrintFailure> {
  const settled = await settleNumbers(tab, options)
  if (!settled.ok) return settled
  const { pdf, skia, numbers, shown, prints } = settled
  const refusal = checkPdf(skia, { fonts: options.fonts, pageText: await tab.text(), shown })
  return refusal ?? { ok: true, pdf: steadyNodeNames(pdf, skia), ...numbers, scale: printScale(skia), prints }
}

function refusalFor(thrown: unknown): PrintFailure {
  if (thrown instanceof UnreadablePdf) {
    return printFailure(
      'check-failed',
      thrown.message,
      'This browser writes PDF in a form that is not known here; print with the packed browser',
    )
  }
  if (!(thrown instanceof BrowserTrouble) && systemCode(thrown) === undefined) throw thrown
  return printFailure(
    'print-failed',
    `the browser could not print the package: ${messageOf(thrown)}`,
    'Print again; if it fails again, a smaller package or more memory may help',
  )
}
