import type { Surroundings } from './surroundings.ts'
import { makeRoomFor, writeTogether } from './write-together.ts'

/** Writes a chart to a file of its own, whole or not at all, and says so on standard error. */
export async function writeChart({ terminal, untilStopped }: Surroundings, path: string, svg: string): Promise<void> {
  const help = 'Name another file with `--svg FILE`'
  await untilStopped(async signal => {
    await makeRoomFor([path], { help, signal })
    await writeTogether([{ path, bytes: svg }], { help, signal })
  })
  terminal.say(`Wrote ${path}`)
}
