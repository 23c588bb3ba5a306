import { printable } from '../diagnostic/printable.ts'
import type { Surroundings } from './surroundings.ts'
import { makeRoomFor, writeTogether } from './write-together.ts'

export const chartHelp = 'Name another file with `--svg FILE`'

/** Writes a chart to a file of its own, whole or not at all, and says so on standard error. */
export async function writeChart({ terminal, untilStopped }: Surroundings, path: string, svg: string): Promise<void> {
  await untilStopped(async signal => {
    await makeRoomFor([path], { help: chartHelp, signal })
    await writeTogether([{ path, bytes: svg }], { help: chartHelp, signal })
  })
  terminal.say(`Wrote ${printable(path)}`)
}
