import { readFile } from 'node:fs/promises'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'

/** The bytes of a file, or of standard input for `-`. Refuses what cannot be read, in words. */
export async function readInput(path: string): Promise<Uint8Array> {
  if (path === '-') return readStandardInput()
  try {
    return await readFile(path)
  } catch (thrown) {
    throw new Stopped(exitStatus.called, `\`${path}\` cannot be read: ${reasonOf(thrown)}`)
  }
}

async function readStandardInput(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  for await (const chunk of process.stdin) chunks.push(chunk)
  return Buffer.concat(chunks)
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder, and a file is needed here',
  ENOTDIR: 'a part of the path is not a folder',
  EACCES: 'access is not permitted',
  EPERM: 'access is not permitted',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EEXIST: 'something of that name is there already',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'the file is larger than is allowed here',
}

/** Why the system refused, in words. */
export function reasonOf(thrown: unknown): string {
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : ''
  return reasons[code] ?? (thrown instanceof Error ? thrown.message : String(thrown))
}
