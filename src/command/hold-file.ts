import { randomUUID } from 'node:crypto'
import { link, readFile, rm, writeFile } from 'node:fs/promises'
import { exitStatus } from './exit-status.ts'
import { holderText, isDead, readHolder, thisHolder } from './lock-holder.ts'
import { codeOf, reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'

const patience = { tries: 100, milliseconds: 50 }

/**
 * Does work on a file that no other run does meanwhile: what two read and both write would lose what the first wrote. The sign of it is a
 * file with `.lock` at its end, which names the process. Waits some seconds for another run, then refuses and says what is in the way; the
 * lock of a process that runs no more is taken away.
 */
export async function holding<Result>(path: string, signal: AbortSignal, work: () => Promise<Result>): Promise<Result> {
  const lock = `${path}.lock`
  const own = holderText(await thisHolder())
  for (let tries = 1; !(await isTaken(lock, path, own)); tries += 1) {
    signal.throwIfAborted()
    if (await isBroken(lock)) continue
    if (tries >= patience.tries) throw inTheWay(lock, path, await textOf(lock))
    await new Promise(soon => setTimeout(soon, patience.milliseconds))
  }
  try {
    return await work()
  } finally {
    await rm(lock, { force: true })
  }
}

/** Makes the lock with its text in one step, so that nobody finds it empty; false where another has it. */
async function isTaken(lock: string, path: string, own: string): Promise<boolean> {
  const made = `${lock}.${randomUUID().slice(0, 8)}`
  try {
    await writeFile(made, own, { flag: 'wx' })
    // A disk that knows no links is written to at once.
    await link(made, lock).catch(async (thrown: unknown) => {
      if (codeOf(thrown) === 'EEXIST') throw thrown
      await writeFile(lock, own, { flag: 'wx' })
    })
    return true
  } catch (thrown) {
    if (codeOf(thrown) === 'EEXIST') return false
    throw new Stopped(exitStatus.written, `\`${path}\` cannot be written: ${reasonOf(thrown)}`)
  } finally {
    await rm(made, { force: true })
  }
}

const textOf = (lock: string): Promise<string> => readFile(lock, 'utf8').catch(() => '')

/**
 * Takes away the lock of a process that runs no more. Of several runs that would, one may at a time, and looks once more: what it then
 * takes away nobody else can have made or taken meanwhile.
 */
async function isBroken(lock: string): Promise<boolean> {
  const text = await textOf(lock)
  const holder = readHolder(text)
  if (!holder || !(await isDead(holder))) return false
  const breaking = `${lock}.break`
  try {
    await writeFile(breaking, '', { flag: 'wx' })
  } catch {
    return false
  }
  try {
    if ((await textOf(lock)) === text) await rm(lock, { force: true })
    return true
  } finally {
    await rm(breaking, { force: true })
  }
}

function inTheWay(lock: string, path: string, text: string): Stopped {
  const holder = readHolder(text)
  const who = holder ? `another run (process ${holder.process} on ${holder.place.split(' ')[0]})` : 'another run'
  return new Stopped(
    exitStatus.written,
    `\`${lock}\` is there: ${who} is writing \`${path}\``,
    `Where none is running, delete \`${lock}\``,
  )
}
