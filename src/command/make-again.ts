import { assets } from '../sheets/assets.ts'
import { openBrowser, readPdf } from '../sheets/pdf/index.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { provePackage } from './package-texts.ts'
import { printPdf } from './print-pdf.ts'
import type { ProveOptions } from './prove-options.ts'
import { htmlText } from './read-html.ts'
import type { ReadPackage } from './read-package.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'

/** A package made again from what an issued one carries. */
export interface Made {
  readonly bytes: Uint8Array
  readonly pages: readonly (readonly string[])[]
  /** Same tool and same browser: then the bytes have to be the same. */
  readonly alike: boolean
}

interface Job {
  readonly found: ReadPackage
  readonly evaluated: Evaluated
  readonly options: ProveOptions
}

/** Makes the package again as it was issued. Stops where its pages cannot be printed. */
export async function makeAgain(around: Surroundings, job: Job): Promise<Made> {
  const { found, evaluated } = job
  const { facts } = found
  const date = facts.date === undefined ? undefined : new Date(facts.date)
  // As the tool that issued it names itself: its name alone is no difference.
  const version = facts.tool.replace(/^undercroft /, '')
  const proved = provePackage(evaluated, {
    version,
    name: found.name,
    command: facts.command,
    draft: facts.draft,
    paper: facts.paper,
    date,
    ...(found.kept ? { kept: found.kept } : {}),
    ...(found.old ? { old: found.old } : {}),
    assets: await assets(around.assets),
  })
  const sameTool = facts.tool === `undercroft ${around.version}`
  if (found.kind === 'HTML') {
    const screen = facts.browser ? proved.compose(facts.browser).screen : proved.screen()
    return { bytes: Buffer.from(screen), pages: [htmlText(screen)], alike: sameTool }
  }
  return printAgain({ ...around, version }, job, { proved, date, sameTool })
}

async function printAgain(
  around: Surroundings,
  { found, evaluated, options }: Job,
  { proved, date, sameTool }: { proved: ReturnType<typeof provePackage>; date: Date | undefined; sameTool: boolean },
): Promise<Made> {
  return around.untilStopped(async signal => {
    around.terminal.doing('starting the browser')
    const browser = await openBrowser({
      variables: around.variables,
      signal,
      ...(options.browser ? { browser: options.browser } : {}),
    })
    if (!browser.ok) throw unprinted(browser.says, browser.help)
    const was = found.facts.browser
    try {
      const printed = await printPdf(browser, proved.compose(was ?? browser.browser), {
        around,
        file: found.name,
        evaluated,
        date,
      })
      if (!printed.ok) throw unprinted(printed.says, printed.help)
      const { name, version, pinned } = browser.browser
      const sameBrowser = was?.name === name && was.version === version && was.pinned === pinned
      const read = await readPdf(printed.pdf)
      return { bytes: printed.pdf, pages: 'pages' in read ? read.pages : [], alike: sameTool && sameBrowser }
    } finally {
      await browser.close()
    }
  })
}

const unprinted = (says: string, help: string): Stopped =>
  new Stopped(exitStatus.written, `The pages could not be made again, so nothing is proved of them: ${says}`, help)
