import { openBrowser } from '../sheets/pdf/index.ts'
import { outHelp as help, type IssueJob, type Written } from './issue-job.ts'
import type { ExpectedPackage, ProvedPackage } from './package-texts.ts'
import { printProved } from './print-proved.ts'
import { writeTogether } from './write-together.ts'

/** Writes the files of a package together; the HTML alone where no PDF is wanted or none can be printed. */
export async function writePackage(expected: ExpectedPackage, job: IssueJob, signal: AbortSignal): Promise<Written> {
  const { around, files, options } = job
  const { terminal, variables } = around
  const unprinted = () => writeHtml(expected.prove().proved, job, signal)
  if (options.htmlOnly) return unprinted()
  terminal.doing('starting the browser')
  const browser = await openBrowser({ variables, signal, ...(options.browser ? { browser: options.browser } : {}) })
  if (!browser.ok) return { ...(await unprinted()), failure: browser }
  try {
    terminal.doing('composing the pages')
    const { proved, screen, printed } = await printProved(browser, expected, { ...job, signal })
    if (!printed.ok) return { ...(await writeHtml(proved, job, signal)), failure: printed }
    const outputs = [
      { path: files.html, bytes: screen },
      { path: files.pdf, bytes: printed.pdf },
    ]
    await writeTogether(outputs, { help, signal })
    sayFaults(proved, job)
    saySmaller(printed.scale, job)
    return { ...files, pages: printed.pages, ...countOf(proved) }
  } finally {
    await browser.close()
  }
}

async function writeHtml(proved: ProvedPackage, job: IssueJob, signal: AbortSignal): Promise<Written> {
  const { html } = job.files
  signal.throwIfAborted()
  await writeTogether([{ path: html, bytes: proved.screen() }], { help, signal })
  sayFaults(proved, job)
  return { html, ...countOf(proved) }
}

const countOf = ({ count: { lines, closing } }: ProvedPackage) => ({ lines, closing })

function sayFaults({ faults }: ProvedPackage, { around }: IssueJob): void {
  for (const { tex, says } of faults)
    around.terminal.say(`A formula of the text could not be set and stands as typed: ${tex}\n${says}`)
}

/** A print that is smaller by less than this looks as it should. */
const leastSmaller = 0.005

function saySmaller(scale: number | undefined, { around }: IssueJob): void {
  if (scale === undefined || scale > 1 - leastSmaller) return
  around.terminal.say(
    `Something is wider than the sheet, so the browser printed its part of the package ${(100 * (1 - scale)).toFixed(1)} % smaller: look for a wide table, formula or unbroken word`,
  )
}
