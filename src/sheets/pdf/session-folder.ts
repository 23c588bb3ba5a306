import { createHash } from 'node:crypto'
import { lstat, mkdtemp, readdir, readlink, rm } from 'node:fs/promises'
import { hostname, tmpdir } from 'node:os'
import { join } from 'node:path'
import { kill, pid } from 'node:process'
import { messageOf, type PrintFailure, printFailure, systemCode } from './print-failure.ts'

const PREFIX = 'undercroft-print-'

/**
 * Makes the temporary folder of one browser session, whose name says which process owns it, and removes those that a killed process of the same
 * user left. Refuses, in words, where none can be made.
 */
export async function makeSession(): Promise<string | PrintFailure> {
  try {
    const place = await processPlace()
    const folder = await mkdtemp(join(tmpdir(), `${PREFIX}${place}-${pid}-`))
    await sweepSessions(folder, place)
    return folder
  } catch (thrown) {
    if (systemCode(thrown) === undefined) throw thrown
    const says = `no temporary folder could be made in \`${tmpdir()}\`: ${messageOf(thrown)}`
    return printFailure('print-failed', says, 'Set `TMPDIR` to a folder that can be written')
  }
}

/** Removes a session's folder. A browser that was just ended may still be writing its profile. */
export const removeSession = (folder: string): Promise<void> =>
  rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 })

/** A process number says nothing of another machine, or of a container, that shares the temporary folder: this tells them apart. */
async function processPlace(): Promise<string> {
  const space = await readlink('/proc/self/ns/pid').catch(() => '')
  return createHash('sha256').update(`${hostname()}\n${space}`).digest('hex').slice(0, 8)
}

async function sweepSessions(own: string, place: string): Promise<void> {
  const { uid } = await lstat(own)
  const names = (await readdir(tmpdir()).catch(() => [])).filter(name => isOfDead(name, place))
  for (const folder of names.map(name => join(tmpdir(), name))) {
    const found = await lstat(folder).catch(() => undefined)
    if (found?.isDirectory() && found.uid === uid) await removeSession(folder).catch(() => undefined)
  }
}

function isOfDead(name: string, place: string): boolean {
  if (!name.startsWith(`${PREFIX}${place}-`)) return false
  const owner = /^(\d+)-/.exec(name.slice(PREFIX.length + place.length + 1))?.[1]
  return owner !== undefined && isDead(Number(owner))
}

/** Sure only where the system knows no such process: one of another user answers that it may not be signalled. */
function isDead(process: number): boolean {
  try {
    kill(process, 0)
    return false
  } catch (thrown) {
    return systemCode(thrown) === 'ESRCH'
  }
}
