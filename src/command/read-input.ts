import { open, stat } from 'node:fs/promises'
import { limits } from '../notebook/limits.ts'
import { exitStatus } from './exit-status.ts'
import { reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'

/** What is read, and the most that is taken of it. */
export interface Readable {
  readonly most: number
  readonly what: string
  /** Only a file will do, no device and nothing that another program writes. */
  readonly plain?: boolean
}

/** More than the reader takes, so that it is the reader that says how much too large a file is; and an end to a source that has none. */
const aNotebook: Readable = { most: 32 * limits.fileBytes, what: 'a notebook' }
const pieceBytes = 1 << 18

/** Returns the bytes of a file, or of standard input for `-`. Refuses what cannot be read, in words. */
export async function readInput(path: string, readable = aNotebook): Promise<Uint8Array> {
  if (path !== '-') await refuseNoFile(path, readable)
  const chunks: Uint8Array[] = []
  let size = 0
  try {
    for await (const chunk of path === '-' ? process.stdin : piecesOf(path)) {
      size += chunk.length
      if (size > readable.most) throw tooLarge(path, readable)
      chunks.push(chunk)
    }
  } catch (thrown) {
    if (thrown instanceof Stopped) throw thrown
    throw new Stopped(exitStatus.called, `${inputName(path)} cannot be read: ${reasonOf(thrown)}`)
  }
  return Buffer.concat(chunks)
}

/** What a shell hands on of another program, `<(…)`, is a pipe by its number: it comes to an end as standard input does. */
const handedOn = /^\/(?:dev|proc\/(?:self|\d+))\/(?:fd\/\d+|stdin)$/

/** Refuses a pipe or a socket with a name: to open it would wait for ever. A record beside a notebook is a file and nothing else. */
async function refuseNoFile(path: string, readable: Readable): Promise<void> {
  const found = await stat(path).catch(() => undefined)
  if (!found || found.isFile() || found.isDirectory()) return
  const isOther = readable.plain === true || found.isSocket() || (found.isFIFO() && !handedOn.test(path))
  if (!isOther) return
  const what = found.isFIFO() ? 'a named pipe' : found.isSocket() ? 'a socket' : 'a device'
  throw new Stopped(
    exitStatus.called,
    `${inputName(path)} cannot be read: it is ${what}, and a file is needed here`,
    ...(readable.plain ? [] : ['`-` reads standard input']),
  )
}

/** A file in pieces: it may be one without an end. */
async function* piecesOf(path: string): AsyncGenerator<Uint8Array> {
  const file = await open(path)
  try {
    for (;;) {
      const { bytesRead, buffer } = await file.read(Buffer.allocUnsafe(pieceBytes), 0, pieceBytes)
      if (bytesRead === 0) return
      yield buffer.subarray(0, bytesRead)
    }
  } finally {
    await file.close()
  }
}

function tooLarge(path: string, readable: Readable): Stopped {
  const has = `${inputName(path)} has more than ${readable.most / 1e6} MB`
  if (readable !== aNotebook) return new Stopped(exitStatus.called, `${has}, and ${readable.what} is never as large`)
  return new Stopped(
    exitStatus.notebook,
    `${has}; the limit of a notebook is ${limits.fileBytes / 1e6} MB`,
    'Name a notebook, or divide it into several',
  )
}

const inputName = (path: string): string => (path === '-' ? 'Standard input' : `\`${path}\``)
