import { joinPdfs } from './join-pdf.ts'
import type { OpenParts } from './open-parts.ts'
import { type PageNumbers, partedNumbers } from './pdf-pages.ts'
import { type PrintFailure, printFailure } from './print-failure.ts'
import type { NumberCells } from './sheet-tab.ts'
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
const UNKNOWN: PageNumbers = { pages: 0, pageOf: {}, before: [] }

/**
 * Prints until the page numbers in the contents, and those in the margins of parts, are those of the PDF: with a guess, the final form at once, and once more only
 * where a number was wrong; without one, a plain print first to learn them. Refuses where the numbers never agree or stand for no place in the PDF.
 */
export async function settleNumbers(
  parts: OpenParts,
  { guess, meanwhile }: { readonly guess?: PageNumbers | undefined; readonly meanwhile?: (() => void) | undefined },
): Promise<SettledPrint | PrintFailure> {
  const print = printing(parts, meanwhile)
  const wanted = parts.parted || hasCells(await (await parts.tab(0)).cells())
  const known = guess && (!parts.parted || guess.before.length === parts.order.length) ? guess : undefined
  let numbers = known ?? (wanted ? partedNumbers(await print(false, UNKNOWN)) : UNKNOWN)
  const before = known === undefined && wanted ? 1 : 0
  for (let final = 1; final <= MOST_FINAL_PRINTS; final += 1) {
    const printed = await print(true, numbers)
    const found = partedNumbers(printed)
    const cells = await cellsOf(parts)
    const lost = cells.ids.find(id => found.pageOf[id] === undefined)
    if (lost !== undefined) return noPlace(lost)
    if (agree(cells, numbers, found)) {
      const shown = shownNumbers(cells, numbers)
      return { ok: true, ...(await together(parts, printed)), numbers: found, shown, prints: before + final }
    }
    numbers = found
  }
  return neverAgree()
}

interface Printed {
  readonly pdf: Uint8Array
  readonly skia: SkiaPdf
}

type Print = (final: boolean, numbers: PageNumbers) => Promise<readonly Printed[]>

/** Prints all parts, and while the browser is at the first of the prints does what else there is to do. */
function printing(parts: OpenParts, meanwhile: (() => void) | undefined): Print {
  let work = meanwhile
  return async (final, numbers) => {
    const printings: Promise<Uint8Array>[] = []
    for (const place of parts.order) {
      const tab = await parts.tab(place)
      await tab.fill(numbers, parts.parted ? place : undefined)
      printings[place] = (await tab.print(final)).pdf
      // The order to print has left this process by then.
      await new Promise<void>(soon => setImmediate(soon))
    }
    const now = work
    work = undefined
    now?.()
    const pdfs = await Promise.all(printings)
    return pdfs.map(pdf => ({ pdf, skia: readSkiaPdf(pdf) }))
  }
}

async function together(parts: OpenParts, printed: readonly Printed[]): Promise<Printed> {
  const [only] = printed
  if (only && !parts.parted) return only
  const headings = await Promise.all(parts.opened().map(tab => tab.headings()))
  const pdf = joinPdfs(printed.map(({ skia }, place) => ({ skia, headings: headings[place] ?? [] })))
  return { pdf, skia: readSkiaPdf(pdf) }
}

const hasCells = ({ ids, count }: NumberCells): boolean => count || ids.length > 0

/** The cells of all parts. Where there are parts, every sheet says how many there are. */
async function cellsOf(parts: OpenParts): Promise<NumberCells> {
  const cells = await Promise.all(parts.opened().map(tab => tab.cells()))
  return {
    ids: [...new Set(cells.flatMap(({ ids }) => ids))],
    count: parts.parted || cells.some(({ count }) => count),
  }
}

function agree(cells: NumberCells, set: PageNumbers, found: PageNumbers): boolean {
  return (
    cells.ids.every(id => set.pageOf[id] === found.pageOf[id]) &&
    (!cells.count || set.pages === found.pages) &&
    found.before.every((pages, place) => found.before.length === 1 || set.before[place] === pages)
  )
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
