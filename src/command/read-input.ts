import { open } from 'node:fs/promises'
import { limits } from '../notebook/limits.ts'
import { exitStatus } from './exit-status.ts'
import { reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'

/** More than the reader takes, so that it is the reader that says how much too large a file is; and an end to a source that has none. */
const most = 32 * limits.fileBytes
const pieceBytes = 1 << 18

/** Returns the bytes of a file, or of standard input for `-`. Refuses what cannot be read, in words. */
export async function readInput(path: string): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  let size = 0
  try {
    for await (const chunk of path === '-' ? process.stdin : piecesOf(path)) {
      size += chunk.length
      if (size > most) throw tooLarge(path)
      chunks.push(chunk)
    }
  } catch (thrown) {
    if (thrown instanceof Stopped) throw thrown
    throw new Stopped(exitStatus.called, `${inputName(path)} cannot be read: ${reasonOf(thrown)}`)
  }
  return Buffer.concat(chunks)
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

function tooLarge(path: string): Stopped {
  const [read, limit] = [most, limits.fileBytes].map(bytes => bytes / 1e6)
  return new Stopped(
    exitStatus.notebook,
    `${inputName(path)} has more than ${read} MB; the limit of a notebook is ${limit} MB`,
    'Name a notebook, or divide it into several',
  )
}

const inputName = (path: string): string => (path === '-' ? 'Standard input' : `\`${path}\``)
