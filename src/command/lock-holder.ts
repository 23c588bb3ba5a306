import { readFile, readlink } from 'node:fs/promises'
import { hostname } from 'node:os'
import { codeOf } from './reason-of.ts'

/** Which process made a lock, as it stands in the lock file: enough to tell later whether it still runs. */
export interface LockHolder {
  readonly process: number
  /** When it started, as the system counts; empty where it does not say. */
  readonly started: string
  /** The machine, and on it the set of processes that numbers are of. */
  readonly place: string
}

const wordOf = (path: string): Promise<string> =>
  readFile(path, 'utf8').then(
    text => text.trim(),
    () => '',
  )

/** This process. */
export async function thisHolder(): Promise<LockHolder> {
  const namespace = await readlink('/proc/self/ns/pid').catch(() => '')
  const place = [hostname(), await wordOf('/etc/machine-id'), namespace].join(' ')
  return { process: process.pid, started: await startOf(process.pid), place }
}

/** On Linux the boot and the tick in it at which a process started: a number is given out again, this never. Empty elsewhere. */
async function startOf(id: number): Promise<string> {
  const [boot, stat] = [await wordOf('/proc/sys/kernel/random/boot_id'), await wordOf(`/proc/${id}/stat`)]
  // Behind the name, which may hold anything, in brackets: the 22nd field of all.
  const tick = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19]
  return boot && tick ? `${boot} ${tick}` : ''
}

export const holderText = (holder: LockHolder): string => `${JSON.stringify(holder)}\n`

/** The holder in a lock file; nothing where none can be read. */
export function readHolder(text: string): LockHolder | undefined {
  try {
    const { process: id, started, place } = JSON.parse(text) as Partial<LockHolder>
    const isSound = Number.isInteger(id) && typeof started === 'string' && typeof place === 'string'
    return isSound ? { process: id as number, started, place } : undefined
  } catch {
    return undefined
  }
}

/** Whether it is sure that the holder runs no more. Of another machine nothing is sure. */
export async function isDead(holder: LockHolder): Promise<boolean> {
  const { place } = await thisHolder()
  if (holder.place !== place) return false
  if (!isRunning(holder.process)) return true
  const started = await startOf(holder.process)
  return holder.started !== '' && started !== '' && started !== holder.started
}

function isRunning(id: number): boolean {
  try {
    return process.kill(id, 0)
  } catch (thrown) {
    return codeOf(thrown) !== 'ESRCH'
  }
}
