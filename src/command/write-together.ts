import { randomUUID } from 'node:crypto'
import { access, constants, realpath, rename, rm, stat, writeFile } from 'node:fs/promises'
import { dirname } from 'node:path'
import { makeFolder } from '../sheets/pdf/make-folder.ts'
import { exitStatus } from './exit-status.ts'
import { codeOf, reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'

/** A file to be written. */
export interface Output {
  readonly path: string
  readonly bytes: string | Uint8Array
}

/** What to do about a file that cannot be written, and what stops the writing. */
export interface WriteTerms {
  readonly help: string
  readonly signal: AbortSignal
}

/**
 * Writes files whole and together, or none of them: each to a temporary file beside its place, all on the disk, then renamed. So a run that is
 * killed, a full disk or a second run at once never leaves half a file in place of a good one, nor one new file beside an old one.
 */
export async function writeTogether(outputs: readonly Output[], terms: WriteTerms): Promise<void> {
  const parts: { readonly part: string; readonly place: string }[] = []
  try {
    for (const output of outputs) {
      const place = await placeOf(output.path, terms)
      const part = partOf(place)
      parts.push({ part, place })
      const { signal } = terms
      await refusing(output.path, terms, async () =>
        writeFile(part, output.bytes, { flush: true, mode: await modeOf(place), signal }),
      )
    }
    terms.signal.throwIfAborted()
    for (const { part, place } of parts) await refusing(place, terms, () => rename(part, place))
  } finally {
    for (const { part } of parts) await rm(part, { force: true })
  }
}

/** Makes the folders of files to be written, and refuses what cannot be written before any work is done for it. */
export async function makeRoomFor(paths: readonly string[], terms: WriteTerms): Promise<void> {
  for (const path of paths) {
    const trial = partOf(await placeOf(path, terms))
    await refusing(path, terms, () => writeFile(trial, ''))
    await rm(trial, { force: true })
  }
}

const partOf = (place: string): string => `${place}.${randomUUID().slice(0, 8)}.part`

/** The file a path leads to, through links; its folder is made. */
async function placeOf(path: string, terms: WriteTerms): Promise<string> {
  await refusing(path, terms, () => makeFolder(dirname(path)))
  const place = await realpath(path).catch(() => path)
  const there = await stat(place).catch(() => undefined)
  if (there?.isDirectory()) throw refused(path, 'a folder of that name is there', terms)
  // A rename would put a file in its place: `/dev/null` would be a device no more.
  if (there && !there.isFile()) throw refused(path, 'it is a device or a pipe, and no file', terms)
  // A rename would put aside even a file that may not be written.
  if (there) await refusing(path, terms, () => access(place, constants.W_OK))
  return place
}

async function refusing(path: string, terms: WriteTerms, work: () => Promise<void>): Promise<void> {
  try {
    await work()
  } catch (thrown) {
    if (codeOf(thrown) === '' || terms.signal.aborted) throw thrown
    throw refused(path, reasonOf(thrown), terms)
  }
}

const refused = (path: string, why: string, { help }: WriteTerms): Stopped =>
  new Stopped(exitStatus.written, `\`${path}\` cannot be written: ${why}`, help)

/** A file that is written anew keeps its permissions. */
const modeOf = (place: string): Promise<number> =>
  stat(place).then(
    ({ mode }) => mode & 0o777,
    () => 0o666,
  )
