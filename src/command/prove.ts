import { resultsData } from '../evaluation/results-data.ts'
import { assets } from '../sheets/assets.ts'
import { openBrowser, readPdf } from '../sheets/pdf/index.ts'
import { dataDifferences } from './data-differences.ts'
import { type Evaluated, evaluateBytes } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { provePackage } from './package-texts.ts'
import { pageDifferences } from './page-differences.ts'
import { printPdf } from './print-pdf.ts'
import type { Proof } from './proof.ts'
import { sayProof } from './proof-text.ts'
import { htmlText } from './read-html.ts'
import { readInput } from './read-input.ts'
import { aPackage, type ReadPackage, readPackage } from './read-package.ts'
import { sha256 } from './sha256.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'

export interface ProveOptions {
  readonly browser?: string
  readonly format: 'text' | 'json'
}

/** `prove PACKAGE`: evaluates the notebook inside a package again, makes the package again, and says whether it is what its notebook gives. */
export async function prove(around: Surroundings, path: string, options: ProveOptions): Promise<ExitStatus> {
  const { terminal } = around
  const shown = path === '-' ? 'standard input' : path
  const found = await readPackage(shown, await readInput(path, aPackage))
  terminal.doing(`evaluating ${found.name}`)
  const evaluated = evaluateBytes(found.notebook, found.name)
  const made = await makeAgain(around, { found, evaluated, options })
  const proof = compared(around, { path: shown, found, evaluated, made })
  sayProof(terminal, proof, options.format)
  return proof.verdict === 'differs' ? exitStatus.notebook : exitStatus.well
}

interface Made {
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

async function makeAgain(around: Surroundings, job: Job): Promise<Made> {
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

function compared(
  around: Surroundings,
  { path, found, evaluated, made }: { path: string; found: ReadPackage; evaluated: Evaluated; made: Made },
): Proof {
  const about = { tool: found.facts.tool, path: found.name, sha256: sha256(found.notebook) }
  const data = JSON.parse(JSON.stringify(resultsData(evaluated.results, evaluated.workings, about)))
  const results = dataDifferences(parsed(found.results), data).map(each => ({ ...each, at: each.at || 'results.json' }))
  const text = pageDifferences(found.pages, made.pages)
  const identical = Buffer.compare(found.bytes, made.bytes) === 0
  const unseen = !identical && made.alike && results.length + text.length === 0
  const differs = unseen || results.length + text.length > 0
  return {
    package: path,
    notebook: { name: found.name, sha256: about.sha256 },
    issuedBy: found.facts.tool,
    provedBy: `undercroft ${around.version}`,
    verdict: identical ? 'identical' : differs ? 'differs' : 'same',
    results,
    text,
    unseen,
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}
