import { printable } from '../diagnostic/printable.ts'
import { plural } from './count-of.ts'
import { exitStatus } from './exit-status.ts'
import { isThere } from './is-there.ts'
import type { IssueJob, Written } from './issue-job.ts'
import { placesOfCharacters } from './places-of-characters.ts'
import { Stopped } from './stopped.ts'

/** Says what was written. Stops where a PDF was wanted and there is none, with the place of what could not be printed. */
export async function sayWritten({ failure, ...written }: Written, job: IssueJob): Promise<void> {
  const { files, options } = job
  const { terminal } = job.around
  const { html, pdf, pages = 0, lines, closing } = written
  if (options.format === 'json') terminal.answer(JSON.stringify(written, null, 2))
  else {
    terminal.answer(
      `Wrote ${printable(html)} (${closing} of ${plural(lines, 'line')} ${lines === 1 ? 'closes' : 'close'})`,
    )
    if (pdf) terminal.answer(`Wrote ${printable(pdf)} (${plural(pages, 'page')})`)
  }
  if (!pdf && (await isThere(files.pdf)))
    terminal.say(`\`${printable(files.pdf)}\` is of an earlier run and does not belong to this \`${printable(html)}\``)
  if (failure) {
    const places = placesOfCharacters(failure.characters ?? '', sourcesOf(job))
    throw new Stopped(exitStatus.written, [`No PDF was written: ${failure.says}`, ...places].join('\n'), failure.help)
  }
}

/** Every text of which characters go into the package. */
const sourcesOf = ({ evaluated, kept, old }: IssueJob) => [
  { path: evaluated.notebook.path, text: evaluated.notebook.text },
  ...(kept ? [{ path: kept.path, text: Buffer.from(kept.bytes).toString() }] : []),
  ...(old ? [{ path: old.label, text: old.evaluated.notebook.text }] : []),
]
