import { basename } from 'node:path'
import { printable } from '../diagnostic/printable.ts'
import { linesOf } from '../evaluation/block-lines.ts'
import { assets } from '../sheets/assets.ts'
import type { TextOptions } from './early-model.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { isThere } from './is-there.ts'
import { type IssueJob, outHelp } from './issue-job.ts'
import type { IssueOptions } from './issue-options.ts'
import { readKept } from './kept-record.ts'
import { packageCommand } from './package-command.ts'
import { packageDate } from './package-date.ts'
import { editionWords } from './package-editions.ts'
import { packageFiles } from './package-files.ts'
import { expectPackage } from './package-texts.ts'
import { oldSide } from './revised-sides.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { sayWritten } from './say-written.ts'
import { errorWords, type OldSide } from './since-revision.ts'
import type { Surroundings } from './surroundings.ts'
import { writePackage } from './write-package.ts'
import { makeRoomFor } from './write-together.ts'

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
      if (await isThere(path)) terminal.say(`\`${printable(path)}\` is of an earlier run and stays as it was`)
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
  await untilStopped(signal => makeRoomFor(wanted, { help: outHelp, signal }))
  terminal.doing('composing the pages', { atOnce: isLong(evaluated) })
  const expected = expectPackage(evaluated, await textOptions(job))
  await sayWritten(await untilStopped(signal => writePackage(expected, job, signal)), job)
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

async function textOptions({ around, file, evaluated, options, kept, old, date }: IssueJob): Promise<TextOptions> {
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
