import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'
import type { Terminal } from './terminal.ts'
import { writeOutput } from './write-output.ts'

/** `start [FOLDER]`: lays down a starter notebook that issues as it stands. Writes over nothing. */
export async function start(terminal: Terminal, folder: string, templates: string): Promise<ExitStatus> {
  const source = join(templates, 'starter')
  const files = (await readdir(source)).sort()
  for (const file of files) {
    const path = join(folder, file)
    const there = await stat(path).then(
      () => true,
      () => false,
    )
    if (there)
      throw new Stopped(
        exitStatus.written,
        `\`${path}\` is there already`,
        'Name another folder, or move the file away',
      )
  }
  for (const file of files) await writeOutput(join(folder, file), await readFile(join(source, file)))
  const notebook = join(folder, files.find(file => file.endsWith('.md')) ?? '')
  terminal.answer(`Wrote ${notebook}`)
  terminal.say(`Next: undercroft check ${notebook}\n      undercroft issue ${notebook}`)
  return exitStatus.well
}
