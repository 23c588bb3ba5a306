import { open, rm } from 'node:fs/promises'
import { exitStatus } from './exit-status.ts'
import { codeOf, reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'

const patience = { tries: 100, milliseconds: 50 }

/**
 * Does work on a file that no other run does meanwhile: what two read and both write would lose what the first wrote. The sign of it is a
 * file with `.lock` at its end. Waits some seconds for another run, then refuses and says what is in the way.
 */
export async function holding<Result>(path: string, signal: AbortSignal, work: () => Promise<Result>): Promise<Result> {
  const lock = `${path}.lock`
  for (let tries = 1; !(await isTaken(lock, path)); tries += 1) {
    signal.throwIfAborted()
    if (tries >= patience.tries)
      throw new Stopped(
        exitStatus.written,
        `\`${lock}\` is there: another run is writing \`${path}\``,
        `Where none is running, delete \`${lock}\``,
      )
    await new Promise(soon => setTimeout(soon, patience.milliseconds))
  }
  try {
    return await work()
  } finally {
    await rm(lock, { force: true })
  }
}

async function isTaken(lock: string, path: string): Promise<boolean> {
  try {
    await (await open(lock, 'wx')).close()
    return true
  } catch (thrown) {
    if (codeOf(thrown) === 'EEXIST') return false
    throw new Stopped(exitStatus.written, `\`${path}\` cannot be written: ${reasonOf(thrown)}`)
  }
}
