import { basename } from 'node:path'
import { linesOf } from '../evaluation/block-lines.ts'
import { assets } from '../sheets/assets.ts'
import { openBrowser, type PrintFailure } from '../sheets/pdf/index.ts'
import { plural } from './count-of.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { isThere } from './is-there.ts'
import type { IssueOptions } from './issue-options.ts'
import { type KeptRecord, readKept } from './kept-record.ts'
import { packageCommand } from './package-command.ts'
import { packageDate } from './package-date.ts'
import { editionWords } from './package-editions.ts'
import { type PackageFiles, packageFiles } from './package-files.ts'
import type { TextOptions } from './package-model.ts'
import { type ExpectedPackage, expectPackage, type ProvedPackage } from './package-texts.ts'
import type { PrintJob } from './print-pdf.ts'
import { printProved } from './print-proved.ts'
import { oldSide } from './revised-sides.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { errorWords, type OldSide } from './since-revision.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { makeRoomFor, writeTogether } from './write-together.ts'

/**
 * `issue FILE`: writes the package as PDF and HTML. A notebook with errors is written only as a draft, marked on every page and
 * under another name; without a browser the HTML is written all the same.
 */
export async function issue(around: Surroundings, file: string, options: IssueOptions): Promise<ExitStatus> {
  const { terminal, untilStopped } = around
  terminal.doing(`evaluating ${file}`)
  const evaluated = await evaluateFile(file)
  const kept = file === '-' ? undefined : await readKept(file)
  const old = options.since === undefined ? undefined : await sinceSide(around, options.since, file)
  const files = await packageFiles(file, options)
  sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  if (evaluated.status === exitStatus.notebook && !options.draft) {
    terminal.say('Nothing was issued: a notebook with errors can only be printed with `--draft`')
    for (const path of [files.html, files.pdf])
      if (await isThere(path)) terminal.say(`\`${path}\` is of an earlier run and stays as it was`)
    return exitStatus.notebook
  }
  const job = {
    around,
    file,
    evaluated,
    files,
    options,
    ...(kept?.there ? { kept } : {}),
    ...(old ? { old } : {}),
    date: packageDate(evaluated.notebook.title, around.variables),
  }
  const wanted = options.htmlOnly ? [files.html] : [files.html, files.pdf]
  await untilStopped(signal => makeRoomFor(wanted, { help, signal }))
  terminal.doing('composing the pages', { atOnce: isLong(evaluated) })
  const expected = expectPackage(evaluated, await textOptions(job))
  await sayWritten(await untilStopped(signal => writeJob(expected, job, signal)), job)
  return evaluated.status
}

/** The older notebook, with what is to be said of it. */
async function sinceSide({ terminal, version }: Surroundings, since: string, file: string): Promise<OldSide> {
  const { label, evaluated, issued } = await oldSide(since, file)
  const says = issued ? editionWords(issued, evaluated, { path: label, version }) : []
  for (const sentence of [...says, ...errorWords({ label, evaluated })]) terminal.say(sentence)
  return { label, evaluated, says }
}

/** A line of working takes some 6 ms to set and prove. */
const isLong = ({ workings }: Evaluated): boolean =>
  workings.blocks.reduce((lines, block) => lines + linesOf(block).length, 0) > 150

interface Job extends PrintJob {
  readonly files: PackageFiles
  readonly options: IssueOptions
  readonly kept?: KeptRecord
  readonly old?: OldSide
}

/** What was written, and why there is no PDF where one was wanted. */
interface Written {
  readonly html: string
  readonly pdf?: string
  readonly pages?: number
  readonly lines: number
  readonly closing: number
  readonly failure?: PrintFailure
}

const help = 'Name another folder with `--out FOLDER`'

async function textOptions({ around, file, evaluated, options, kept, old, date }: Job): Promise<TextOptions> {
  return {
    version: around.version,
    name: file === '-' ? 'notebook.md' : basename(file),
    command: packageCommand(file, options),
    draft: options.draft === true,
    paper: options.paper ?? evaluated.notebook.title.paper,
    date,
    ...(kept ? { kept } : {}),
    ...(old ? { old } : {}),
    assets: await assets(around.assets),
  }
}

async function writeJob(expected: ExpectedPackage, job: Job, signal: AbortSignal): Promise<Written> {
  const { around, files, options } = job
  const { terminal, variables } = around
  const unprinted = () => writeHtml(expected.prove().proved, job, signal)
  if (options.htmlOnly) return unprinted()
  terminal.doing('starting the browser')
  const browser = await openBrowser({ variables, signal, ...(options.browser ? { browser: options.browser } : {}) })
  if (!browser.ok) return { ...(await unprinted()), failure: browser }
  try {
    terminal.doing('composing the pages')
    const { proved, printed } = await printProved(browser, expected, job)
    if (!printed.ok) return { ...(await writeHtml(proved, job, signal)), failure: printed }
    const outputs = [
      { path: files.html, bytes: proved.screen(browser.browser) },
      { path: files.pdf, bytes: printed.pdf },
    ]
    await writeTogether(outputs, { help, signal })
    sayFaults(proved, job)
    return { ...files, pages: printed.pages, ...countOf(proved) }
  } finally {
    await browser.close()
  }
}

async function writeHtml(proved: ProvedPackage, job: Job, signal: AbortSignal): Promise<Written> {
  const { html } = job.files
  signal.throwIfAborted()
  await writeTogether([{ path: html, bytes: proved.screen() }], { help, signal })
  sayFaults(proved, job)
  return { html, ...countOf(proved) }
}

const countOf = ({ count: { lines, closing } }: ProvedPackage) => ({ lines, closing })

function sayFaults({ faults }: ProvedPackage, { around }: Job): void {
  for (const { tex, says } of faults)
    around.terminal.say(`A formula of the text could not be set and stands as typed: ${tex}\n${says}`)
}

async function sayWritten({ failure, ...written }: Written, { around, files, options }: Job): Promise<void> {
  const { terminal } = around
  const { html, pdf, pages = 0, lines, closing } = written
  if (options.format === 'json') terminal.answer(JSON.stringify(written, null, 2))
  else {
    terminal.answer(`Wrote ${html} (${closing} of ${plural(lines, 'line')} ${lines === 1 ? 'closes' : 'close'})`)
    if (pdf) terminal.answer(`Wrote ${pdf} (${plural(pages, 'page')})`)
  }
  if (!pdf && (await isThere(files.pdf)))
    terminal.say(`\`${files.pdf}\` is of an earlier run and does not belong to this \`${html}\``)
  if (failure) throw new Stopped(exitStatus.written, `No PDF was written: ${failure.says}`, failure.help)
}
