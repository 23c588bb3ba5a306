import { readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { printable } from '../diagnostic/printable.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { isThere } from './is-there.ts'
import { type Starter, starters } from './starters.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { writeTogether } from './write-together.ts'

const help = 'Name another folder, or move the file away'

/** `start [FOLDER]`: lays down a starter notebook that issues as it stands. Writes over nothing. */
export async function start(
  { terminal, assets, untilStopped }: Surroundings,
  folder: string,
  { template }: { readonly template: Starter },
): Promise<ExitStatus> {
  const { file } = starters[template]
  const notebook = join(folder, basename(file))
  if (await isThere(notebook)) throw new Stopped(exitStatus.written, `\`${notebook}\` is there already`, help)
  const bytes = await readFile(join(assets, 'templates', file))
  await untilStopped(signal => writeTogether([{ path: notebook, bytes }], { help, signal }))
  terminal.answer(`Wrote ${printable(notebook)}`)
  terminal.say(`Next: undercroft check ${printable(notebook)}\n      undercroft issue ${printable(notebook)}`)
  return exitStatus.well
}
