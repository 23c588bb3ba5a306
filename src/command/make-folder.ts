import { access, constants, mkdir, stat } from 'node:fs/promises'
import { dirname } from 'node:path'
import { codeOf } from './reason-of.ts'

/** Makes a folder and those above it; fails with the system's true reason. */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true })
  } catch (thrown) {
    // On a read-only disk the system only says that the new folder is not there: the folder above knows better.
    if (codeOf(thrown) === 'ENOENT') await access(await nearestFolder(folder), constants.W_OK)
    if (codeOf(thrown) === 'EEXIST') throw Object.assign(new Error(`\`${folder}\` is a file`), { code: 'ENOTDIR' })
    throw thrown
  }
}

/** The folder itself where it is there, else the nearest above it that is. */
async function nearestFolder(folder: string): Promise<string> {
  const there = await stat(folder).catch(() => undefined)
  const above = dirname(folder)
  return there || above === folder ? folder : nearestFolder(above)
}
