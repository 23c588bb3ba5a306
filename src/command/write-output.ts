import { mkdir } from 'node:fs/promises'
import { dirname } from 'node:path'
import writeFileAtomic from 'write-file-atomic'
import { exitStatus } from './exit-status.ts'
import { reasonOf } from './read-input.ts'
import { Stopped } from './stopped.ts'

/**
 * Writes a file whole or not at all: a temporary file beside it, then a rename, so that a run that is killed, a full disk or a
 * second run at once never leaves half a file in place of a good one.
 */
export async function writeOutput(path: string, bytes: string | Uint8Array): Promise<void> {
  try {
    await mkdir(dirname(path), { recursive: true })
    await writeFileAtomic(path, typeof bytes === 'string' ? bytes : Buffer.from(bytes))
  } catch (thrown) {
    throw new Stopped(
      exitStatus.written,
      `\`${path}\` cannot be written: ${reasonOf(thrown)}`,
      'Name another folder with `--out FOLDER`',
    )
  }
}
