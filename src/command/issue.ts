import { basename, dirname, extname, join } from 'node:path'
import { resultsData } from '../evaluation/results-data.ts'
import { type Assets, assets } from '../sheets/assets.ts'
import { finishPdf, type OpenBrowser, openBrowser, type PrintFailure } from '../sheets/pdf/index.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { packageDate } from './package-date.ts'
import { type PackageTexts, packageTexts, type TextOptions } from './package-texts.ts'
import { keepGuess, readGuess } from './page-guess.ts'
import type { IssueOptions, Surroundings } from './program.ts'
import { plural, sayDiagnostics } from './say-diagnostics.ts'
import { sha256 } from './sha256.ts'
import { Stopped } from './stopped.ts'
import { writeOutput } from './write-output.ts'

/** Fonts that may stand in a package: no face of the machine's. */
const fonts = ['KaTeX_*', 'SourceSerif4*', 'Source Serif 4*']

/**
 * `issue FILE`: writes the package as PDF and HTML. A notebook with errors is written only as a draft, marked on every page and
 * under another name; without a browser the HTML is written all the same.
 */
export async function issue(around: Surroundings, file: string, options: IssueOptions): Promise<ExitStatus> {
  const { terminal } = around
  const evaluated = await evaluateFile(file)
  sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  const errors = evaluated.status === exitStatus.notebook
  if (errors && !options.draft) {
    terminal.say('Nothing was issued: a notebook with errors can only be printed with `--draft`')
    return exitStatus.notebook
  }
  const job: Job = {
    around,
    file,
    options,
    evaluated,
    date: packageDate(evaluated.notebook.title, around.variables),
    target: targetOf(file, options),
  }
  const [look, browser] = await Promise.all([assets(around.assets), options.htmlOnly ? undefined : browserFor(job)])
  if (!browser?.ok) {
    await writeHtml(job, textsFor(job, look))
    if (browser) throw notPrinted(browser, job)
    return evaluated.status
  }
  try {
    await printAndWrite(job, textsFor(job, look, browser), browser)
  } finally {
    await browser.close()
  }
  return evaluated.status
}

interface Job {
  readonly around: Surroundings
  readonly file: string
  readonly options: IssueOptions
  readonly evaluated: Evaluated
  readonly date: Date | undefined
  /** Path of what is written, without its ending. */
  readonly target: string
}

function targetOf(file: string, options: IssueOptions): string {
  const name = file === '-' ? 'package' : basename(file, extname(file))
  const folder = options.out ?? (file === '-' ? '.' : dirname(file))
  return join(folder, options.draft ? `${name}-draft` : name)
}

const browserFor = ({ around, options }: Job) =>
  openBrowser({
    variables: around.variables,
    signal: around.signal,
    ...(options.browser ? { browser: options.browser } : {}),
  })

function textsFor(job: Job, look: Assets, browser?: OpenBrowser): PackageTexts {
  const { around, file, options, evaluated, date } = job
  const textOptions: TextOptions = {
    version: around.version,
    command: commandOf(file, options),
    draft: options.draft === true,
    paper: options.paper ?? evaluated.notebook.title.paper,
    date,
    assets: look,
    ...(browser ? { browser: browser.browser } : {}),
  }
  const texts = packageTexts(evaluated, textOptions)
  const { lines, closing, failing } = texts.proof
  if (closing < lines) {
    const first = failing
      .slice(0, 5)
      .map(({ number, printed, recomputed }) => `  ${number}: printed ${printed}, recomputed ${recomputed}`)
    throw new Error(`${lines - closing} of ${lines} printed lines do not close:\n${first.join('\n')}`)
  }
  for (const { tex, says } of texts.faults)
    around.terminal.say(`A formula of the text could not be set: ${tex}\n${says}`)
  return texts
}

/** The command as the record states it, without folders of this machine. */
function commandOf(file: string, options: IssueOptions): string {
  const words = ['undercroft', 'issue', file === '-' ? '-' : basename(file)]
  if (options.draft) words.push('--draft')
  if (options.paper) words.push('--paper', options.paper)
  if (options.htmlOnly) words.push('--html-only')
  return words.join(' ')
}

async function writeHtml(job: Job, texts: PackageTexts): Promise<void> {
  const path = `${job.target}.html`
  await writeOutput(path, texts.screen)
  sayWritten(job, path, texts)
}

function sayWritten({ around }: Job, path: string, { proof }: PackageTexts): void {
  around.terminal.answer(
    `Wrote ${path} (${proof.closing} of ${plural(proof.lines, 'line')} ${proof.lines === 1 ? 'closes' : 'close'})`,
  )
}

async function printAndWrite(job: Job, texts: PackageTexts, browser: OpenBrowser): Promise<void> {
  const { around, file, evaluated } = job
  const guess = await readGuess(file, around.variables)
  const printed = await browser.print(texts.print, { fonts, ...(guess ? { guess } : {}) })
  if (!printed.ok) {
    await writeHtml(job, texts)
    throw notPrinted(printed, job)
  }
  const { title } = evaluated.notebook
  const finished = finishPdf(printed.pdf, {
    title: [title.number, title.title].filter(Boolean).join(' '),
    author: title.prepared,
    language: title.language || 'en',
    creator: `undercroft ${around.version}`,
    date: job.date ?? new Date(0),
    sha256: sha256(Buffer.from(`${around.version}\n${sha256(evaluated.bytes)}`)),
    attachments: attachmentsOf(job),
  })
  await writeHtml(job, texts)
  if (!finished.ok) throw notPrinted(finished, job)
  await writeOutput(`${job.target}.pdf`, finished.pdf)
  await keepGuess(file, around.variables, printed)
  around.terminal.answer(`Wrote ${job.target}.pdf (${plural(printed.pages, 'page')})`)
}

function attachmentsOf({ around, file, evaluated }: Job) {
  const name = file === '-' ? 'notebook.md' : basename(file)
  const about = { tool: `undercroft ${around.version}`, path: name, sha256: sha256(evaluated.bytes) }
  const data = JSON.stringify(resultsData(evaluated.results, evaluated.workings, about), null, 2)
  return [
    {
      name,
      bytes: evaluated.bytes,
      mime: 'text/markdown',
      relationship: 'Source' as const,
      description: 'The notebook this package was made from',
    },
    {
      name: 'results.json',
      bytes: Buffer.from(`${data}\n`),
      mime: 'application/json',
      relationship: 'Data' as const,
      description: 'Every value, step and check of this package',
    },
  ]
}

function notPrinted(failure: PrintFailure, job: Job): Stopped {
  return new Stopped(
    exitStatus.written,
    `No PDF was written: ${failure.says}. The HTML file ${job.target}.html is complete.`,
    failure.help,
  )
}
