import type { OpenBrowser } from '../sheets/pdf/index.ts'
import type { ExpectedPackage, ProvedPackage } from './package-texts.ts'
import { type PrintJob, printPdf } from './print-pdf.ts'

/**
 * Prints a package and has its page proved and composed for the screen while the browser is at it, with the count on the cover that the proof should come to. Where it
 * comes to another, prints again: what is printed is what was proved. Throws where a printed line does not close,
 * and the reason of the signal that stops it.
 */
export async function printProved(
  browser: OpenBrowser,
  expected: ExpectedPackage,
  { signal, ...job }: PrintJob & { readonly signal?: AbortSignal },
): Promise<{
  readonly proved: ProvedPackage
  readonly screen: string
  readonly printed: Awaited<ReturnType<typeof printPdf>>
}> {
  const prove = () => {
    signal?.throwIfAborted()
    const { proved, stands } = expected.prove()
    return { proved, stands, screen: proved.screen(browser.browser) }
  }
  let found: ReturnType<typeof prove> | undefined
  const meanwhile = () => {
    found = prove()
  }
  const printed = await printPdf(browser, expected.toPrint(browser.browser, signal), { ...job, meanwhile })
  const { proved, stands, screen } = found ?? prove()
  if (stands || !printed.ok) return { proved, screen, printed }
  return { proved, screen, printed: await printPdf(browser, proved.compose(browser.browser), job) }
}
