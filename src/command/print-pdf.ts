import { finishPdf, type OpenBrowser, type PrintFailure } from '../sheets/pdf/index.ts'
import type { Evaluated } from './evaluated.ts'
import type { ToPrint } from './package-texts.ts'
import { keepGuess, readGuess } from './page-guess.ts'
import { sha256 } from './sha256.ts'
import type { Surroundings } from './surroundings.ts'

/** Fonts that may stand in a package: no face of the machine's. */
const fonts = ['KaTeX_*', 'SourceSerif4*', 'Source Serif 4*']

export interface PrintJob {
  readonly around: Surroundings
  readonly file: string
  readonly evaluated: Evaluated
  readonly date: Date | undefined
}

/** Returns the finished PDF of a package's print text, with its notebook and results inside it, or why there is none; `meanwhile` is done while the browser prints. */
export async function printPdf(
  browser: OpenBrowser,
  { print: parts, order, attachments }: ToPrint,
  { around, file, evaluated, date, meanwhile }: PrintJob & { readonly meanwhile?: () => void },
): Promise<{ ok: true; pdf: Uint8Array; pages: number; scale: number | undefined } | PrintFailure> {
  const { variables, version, terminal } = around
  const guess = await readGuess(file, variables)
  terminal.doing(guess ? `printing ${guess.pages} pages` : 'printing')
  const printed = await browser.print(parts, {
    fonts,
    ...(guess ? { guess } : {}),
    ...(order ? { order } : {}),
    ...(meanwhile ? { meanwhile } : {}),
  })
  if (!printed.ok) return printed
  const { title } = evaluated.notebook
  const finished = finishPdf(printed.pdf, {
    title: [title.number, title.title].filter(Boolean).join(' '),
    author: title.prepared,
    language: title.language || 'en',
    creator: `undercroft ${version}`,
    date: date ?? new Date(0),
    sha256: sha256(Buffer.from(`${version}\n${sha256(evaluated.bytes)}`)),
    attachments,
  })
  if (!finished.ok) return finished
  await keepGuess(file, variables, printed)
  return { ...finished, pages: printed.pages, scale: printed.scale }
}
