import { access, mkdtemp, readdir, rename, rm, stat } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { makeFolder } from './make-folder.ts'
import { systemCode } from './print-failure.ts'

/** What must be in the folder, and how to fill one that is empty. */
export interface Unpacking {
  /** Paths in the folder without which it is not whole. */
  readonly needs: readonly string[]
  readonly fill: (empty: string) => Promise<void>
}

const PART = '.part-'
const STALE_AFTER = 60 * 60 * 1000

/**
 * Returns `folder` once it is filled. It is filled under another name and then renamed, so that a run killed half-way leaves no half folder
 * and of two runs at once one wins and both go on. Parts that a killed run left are removed when they are an hour old.
 */
export async function unpackOnce(folder: string, unpacking: Unpacking): Promise<string> {
  if (await isWhole(folder, unpacking.needs)) return folder
  await makeFolder(dirname(folder))
  const part = await mkdtemp(`${folder}${PART}`)
  try {
    await removeStaleParts(folder, (await stat(part)).mtimeMs)
    await unpacking.fill(part)
    await putInPlace(part, { folder, needs: unpacking.needs })
  } finally {
    await rm(part, { recursive: true, force: true })
  }
  return folder
}

async function isWhole(folder: string, needs: readonly string[]): Promise<boolean> {
  const found = await Promise.allSettled(needs.map(path => access(join(folder, path))))
  return found.every(result => result.status === 'fulfilled')
}

/** A folder in the way that is not whole (a cleaner took files out of it) is moved aside first. */
async function putInPlace(part: string, place: { folder: string; needs: readonly string[] }): Promise<void> {
  try {
    await rename(part, place.folder)
  } catch (thrown) {
    if (systemCode(thrown) === undefined) throw thrown
    if (await isWhole(place.folder, place.needs)) return
    const aside = await mkdtemp(`${place.folder}${PART}`)
    await rename(place.folder, join(aside, 'broken'))
    await rename(part, place.folder)
    await rm(aside, { recursive: true, force: true })
  }
}

async function removeStaleParts(folder: string, now: number): Promise<void> {
  const parent = dirname(folder)
  const parts = (await readdir(parent)).filter(name => name.startsWith(`${basename(folder)}${PART}`))
  for (const part of parts.map(name => join(parent, name))) {
    const age = now - ((await stat(part).catch(() => undefined))?.mtimeMs ?? now)
    if (age > STALE_AFTER) await rm(part, { recursive: true, force: true })
  }
}
