import { constants } from 'node:fs'
import { access, lstat, mkdir, mkdtemp, rmdir } from 'node:fs/promises'
import { homedir, tmpdir } from 'node:os'
import { isAbsolute, join } from 'node:path'
import { makeFolder } from './make-folder.ts'
import type { PrintEnvironment } from './print-environment.ts'
import { systemCode } from './print-failure.ts'

/** Returns the user's own folder for what can be made again; the XDG base directory specification has a path that is not absolute ignored. */
export function usersCacheFolder({ XDG_CACHE_HOME, HOME }: PrintEnvironment['variables']): string {
  const caches = XDG_CACHE_HOME && isAbsolute(XDG_CACHE_HOME) ? XDG_CACHE_HOME : join(HOME || homedir(), '.cache')
  return join(caches, 'undercroft')
}

/**
 * Returns a folder that can be written and that nobody else can write: the one the caller named, else `undercroft` in the user's cache, else one in the
 * system's temporary folder. Since a program is started from it, a temporary folder that belongs to another user is not taken.
 */
export async function chooseCacheFolder(environment: PrintEnvironment): Promise<string> {
  const { cacheFolder, variables } = environment
  const folder = cacheFolder ?? usersCacheFolder(variables)
  return (await canWrite(folder)) ? folder : temporaryCache()
}

async function canWrite(folder: string): Promise<boolean> {
  try {
    await makeFolder(folder)
    await access(folder, constants.W_OK | constants.X_OK)
    return true
  } catch (thrown) {
    if (systemCode(thrown) === undefined) throw thrown
    return false
  }
}

async function temporaryCache(): Promise<string> {
  const probe = await mkdtemp(join(tmpdir(), 'undercroft-cache-'))
  const own = (await lstat(probe)).uid
  const shared = join(tmpdir(), `undercroft-cache-of-${own}`)
  await mkdir(shared, { mode: 0o700 }).catch(() => undefined)
  const found = await lstat(shared).catch(() => undefined)
  if (found?.isDirectory() !== true || found.uid !== own || (found.mode & 0o022) !== 0) return probe
  await rmdir(probe)
  return shared
}
