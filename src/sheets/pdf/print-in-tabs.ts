import { mkdtemp, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser } from 'puppeteer-core'
import { checkPdf } from './check-pdf.ts'
import { type OpenParts, openParts, type Part } from './open-parts.ts'
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
import { steadyNodeNames } from './steady-node-names.ts'

/** What a print needs besides its document. */
export interface PrintOptions {
  /** Names of the fonts that may be in the PDF; a star at the end stands for any ending (`KaTeX_*`). */
  readonly fonts: readonly string[]
  /** The page numbers of an earlier print of the document: right ones save a print, wrong ones do no harm. */
  readonly guess?: PageNumbers
  /** In which order the browser gets the parts of the document, by their places from 0; as they stand unless given. */
  readonly order?: readonly number[]
  /** Work of the caller's that is done while the browser is at the first print. What it throws ends the printing. */
  readonly meanwhile?: () => void
}

/** A PDF that passed its checks, with the numbers to guess from the next time. */
export interface PrintedPackage extends PageNumbers {
  readonly ok: true
  readonly pdf: Uint8Array
  /** At which part of its size all was printed, or the smallest part; undefined where this cannot be read. */
  readonly scale: number | undefined
  /** How often the browser printed. */
  readonly prints: number
}

interface PrintPlace extends PrintOptions {
  readonly tabs: Browser
  readonly folder: string
}

/** Prints a document, whole or in parts, in tabs of its own and checks the PDF. What finding a part throws comes out as it is. */
export async function printInTabs(parts: readonly Part[], place: PrintPlace): Promise<PrintedPackage | PrintFailure> {
  let folder: string | undefined
  let open: OpenParts | undefined
  try {
    folder = await mkdtemp(join(place.folder, 'page-'))
    open = openParts(parts, { ...place, folder })
    return await printAndCheck(open, place)
  } catch (thrown) {
    return refusalFor(thrown)
  } finally {
    await Promise.all((open?.opened() ?? []).map(tab => tab.close().catch(() => undefined)))
    if (folder !== undefined) await rm(folder, { recursive: true, force: true })
  }
}

async function printAndCheck(parts: OpenParts, options: PrintOptions): Promise<PrintedPackage | PrintFailure> {
  const settled = await settleNumbers(parts, options)
  if (!settled.ok) return settled
  const { pdf, skia, numbers, shown, prints } = settled
  const texts = await Promise.all(parts.opened().map(tab => tab.text()))
  const refusal = checkPdf(skia, { fonts: options.fonts, pageText: texts.join('\n'), shown })
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
