import { mkdir, stat } from 'node:fs/promises'
import { dirname } from 'node:path'
import { systemCode } from './print-failure.ts'

/**
 * Makes a folder and those above it, one by one. The way of the library, `recursive`, calls a read-only disk a missing folder, and never
 * comes back where no folder can be made, as in `/proc` or in a working folder that is gone.
 */
export async function makeFolder(folder: string): Promise<void> {
  if (await isFolder(folder)) return
  if (dirname(folder) !== folder) await makeFolder(dirname(folder))
  try {
    await mkdir(folder)
  } catch (thrown) {
    // Somebody else may have made it meanwhile.
    if (systemCode(thrown) !== 'EEXIST' || !(await isFolder(folder))) throw thrown
  }
}

async function isFolder(path: string): Promise<boolean> {
  try {
    if ((await stat(path)).isDirectory()) return true
  } catch (thrown) {
    if (systemCode(thrown) === 'ENOENT') return false
    throw thrown
  }
  throw Object.assign(new Error(`\`${path}\` is a file`), { code: 'ENOTDIR' })
}
