import type { OpenBrowser } from '../sheets/pdf/index.ts'
import type { ExpectedPackage, ProvedPackage } from './package-texts.ts'
import { type PrintJob, printPdf } from './print-pdf.ts'

/**
 * Prints a package and has its page proved while the browser is at it, with the count on the cover that the proof should come to. Where it
 * comes to another, prints again: what is printed is what was proved. Throws where a printed line does not close.
 */
export async function printProved(
  browser: OpenBrowser,
  expected: ExpectedPackage,
  job: PrintJob,
): Promise<{ readonly proved: ProvedPackage; readonly printed: Awaited<ReturnType<typeof printPdf>> }> {
  let found: ReturnType<typeof expected.prove> | undefined
  const meanwhile = () => {
    found = expected.prove()
  }
  const printed = await printPdf(browser, expected.toPrint(browser.browser), { ...job, meanwhile })
  const { proved, stands } = found ?? expected.prove()
  if (stands || !printed.ok) return { proved, printed }
  return { proved, printed: await printPdf(browser, proved.compose(browser.browser), job) }
}
