import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { isThere } from './is-there.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { writeTogether } from './write-together.ts'

const help = 'Name another folder, or move the file away'

/** `start [FOLDER]`: lays down a starter notebook that issues as it stands. Writes over nothing. */
export async function start({ terminal, assets, untilStopped }: Surroundings, folder: string): Promise<ExitStatus> {
  const source = join(assets, 'templates', 'starter')
  const files = (await readdir(source)).sort()
  const starter = files.find(file => file.endsWith('.md'))
  if (!starter) throw new Error(`no starter notebook in ${source}`)
  for (const path of files.map(file => join(folder, file)))
    if (await isThere(path)) throw new Stopped(exitStatus.written, `\`${path}\` is there already`, help)
  const outputs = await Promise.all(
    files.map(async file => ({ path: join(folder, file), bytes: await readFile(join(source, file)) })),
  )
  await untilStopped(signal => writeTogether(outputs, { help, signal }))
  const notebook = join(folder, starter)
  terminal.answer(`Wrote ${notebook}`)
  terminal.say(`Next: undercroft check ${notebook}\n      undercroft issue ${notebook}`)
  return exitStatus.well
}
