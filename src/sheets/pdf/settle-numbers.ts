import { type PageNumbers, readPageNumbers } from './pdf-pages.ts'
import { type PrintFailure, printFailure } from './print-failure.ts'
import type { NumberCells, SheetTab } from './sheet-tab.ts'
import { readSkiaPdf, type SkiaPdf } from './skia-pdf.ts'

/** A final print whose set numbers are its own. */
export interface SettledPrint {
  readonly ok: true
  readonly pdf: Uint8Array
  readonly skia: SkiaPdf
  readonly numbers: PageNumbers
  readonly shown: { readonly pages: number | undefined; readonly pageOf: Readonly<Record<string, number>> }
  readonly prints: number
}

const MOST_FINAL_PRINTS = 3
const UNKNOWN: PageNumbers = { pages: 0, pageOf: {} }

/**
 * Prints until the page numbers in the contents are those of the PDF: with a guess, the final form at once, and once more only where a number was wrong;
 * without one, a plain print first to learn them. Refuses where the numbers never agree or stand for no place in the PDF.
 */
export async function settleNumbers(
  tab: SheetTab,
  { guess, meanwhile }: { readonly guess?: PageNumbers | undefined; readonly meanwhile?: (() => void) | undefined },
): Promise<SettledPrint | PrintFailure> {
  const print = printing(tab, meanwhile)
  const cells = await tab.cells()
  const wanted = cells.count || cells.ids.length > 0
  let numbers = guess ?? (wanted ? await learnNumbers(tab, print) : UNKNOWN)
  const before = guess === undefined && wanted ? 1 : 0
  for (let final = 1; final <= MOST_FINAL_PRINTS; final += 1) {
    await tab.fill(numbers)
    const pdf = await print(true)
    const skia = readSkiaPdf(pdf)
    const found = readPageNumbers(skia)
    const lost = cells.ids.find(id => found.pageOf[id] === undefined)
    if (lost !== undefined) return noPlace(lost)
    const shown = shownNumbers(cells, numbers)
    if (agree(cells, numbers, found)) return { ok: true, pdf, skia, numbers: found, shown, prints: before + final }
    numbers = found
  }
  return neverAgree()
}

type Print = (final: boolean) => Promise<Uint8Array>

/** Prints, and while the browser is at the first of the prints does what else there is to do. */
function printing(tab: SheetTab, meanwhile: (() => void) | undefined): Print {
  let work = meanwhile
  return async final => {
    const { pdf } = await tab.print(final)
    // The order to print has left this process by then.
    await new Promise<void>(soon => setImmediate(soon))
    const now = work
    work = undefined
    now?.()
    return pdf
  }
}

async function learnNumbers(tab: SheetTab, print: Print): Promise<PageNumbers> {
  await tab.fill(UNKNOWN)
  return readPageNumbers(readSkiaPdf(await print(false)))
}

function agree(cells: NumberCells, set: PageNumbers, found: PageNumbers): boolean {
  return cells.ids.every(id => set.pageOf[id] === found.pageOf[id]) && (!cells.count || set.pages === found.pages)
}

function shownNumbers(cells: NumberCells, set: PageNumbers): SettledPrint['shown'] {
  const pageOf = Object.fromEntries(cells.ids.map(id => [id, set.pageOf[id] ?? 0]))
  return { pages: cells.count ? set.pages : undefined, pageOf }
}

function noPlace(id: string): PrintFailure {
  const says = `the contents want the page of \`${id}\`, and no page of the PDF has that name`
  return printFailure('check-failed', says, 'The document must hold an element with this id and a link to it')
}

function neverAgree(): PrintFailure {
  const says = `the page numbers in the contents still disagreed with the pages after ${MOST_FINAL_PRINTS} prints`
  return printFailure('check-failed', says, 'Setting a number moves the pages; give the number cells a fixed width')
}
